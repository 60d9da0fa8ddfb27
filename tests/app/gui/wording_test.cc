#include "app/gui/wording.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>

#include "app/usecases/advise_dose.h"

namespace flowkin {
namespace {

BoardCup CupThatNeeds(StepKind kind) {
  BoardCup cup;
  cup.details.label = "Lagoon";
  cup.step.kind = kind;
  cup.step.films = 2;
  cup.step.amount_ml = 2.25;
  return cup;
}

class WordingTest : public ::testing::Test {
 protected:
  void SetUp() override { QLocale::setDefault(QLocale("en_US")); }
  Wording words_{Formats(false)};
};

TEST_F(WordingTest, NamesTheAmountInMillilitres) {
  EXPECT_EQ(words_.Step(CupThatNeeds(StepKind::kAdd)),
            "Add 2.25\u00a0mL of water, stir one minute, film again.");
}

TEST_F(WordingTest, NamesTheAmountInHerUnit) {
  BoardCup cup = CupThatNeeds(StepKind::kAdd);
  cup.step.unit = DoseUnit{"spatula tip", 0.1};
  cup.step.amount_units = 12.0;
  EXPECT_EQ(words_.Step(cup),
            "Add 12 × spatula tip of water, stir one minute, film again.");
}

TEST_F(WordingTest, AsksForNoMeasureFinerThanADrop) {
  BoardCup cup = CupThatNeeds(StepKind::kUseFinerUnit);
  cup.step.amount_ml = 0.3;
  EXPECT_EQ(words_.Step(cup), "Measure finer: at most 0.3\u00a0mL at once.");
  cup.step.amount_ml.reset();
  EXPECT_EQ(words_.Step(cup), "Stop here, or film it again to know it better.");
}

TEST_F(WordingTest, MarksARatioOfBeforeAnAddition) {
  BoardCup cup = CupThatNeeds(StepKind::kStirAndFilm);
  EXPECT_EQ(Wording::Ratio(cup), "");
  cup.comparison.emplace();
  cup.comparison->outcome = Outcome::kMeasured;
  cup.comparison->ratio.ln_ratio.value = std::log(1.5);
  cup.comparison->interval.low = 1.25;
  cup.comparison->interval.high = 1.75;
  EXPECT_EQ(Wording::Ratio(cup), "1.50 (1.25 to 1.75)");
  cup.before_addition = true;
  EXPECT_EQ(Wording::Ratio(cup), "was 1.50 (1.25 to 1.75)");
}

TEST_F(WordingTest, HasASentenceForEveryStep) {
  for (int kind = 0; kind <= static_cast<int>(StepKind::kFilmBaseCoat);
       ++kind) {
    const QString step = words_.Step(CupThatNeeds(static_cast<StepKind>(kind)));
    EXPECT_TRUE(step.endsWith('.')) << kind << ": " << step.toStdString();
    EXPECT_FALSE(step.contains('%')) << kind << ": " << step.toStdString();
  }
}

TEST_F(WordingTest, HasASentenceForEveryReason) {
  BoardCup cup;
  for (int reason = 1; reason <= static_cast<int>(StepReason::kThinner);
       ++reason) {
    cup.step.reason = static_cast<StepReason>(reason);
    EXPECT_TRUE(words_.Reason(cup).endsWith('.')) << reason;
  }
}

TEST_F(WordingTest, SaysWhichCupHoldsThePourBack) {
  Board board;
  EXPECT_EQ(words_.Glance(board), "Put the base coat on the bench.");
  BoardCup base;
  base.id = 1;
  base.base_coat = true;
  BoardCup cup;
  cup.id = 2;
  cup.details.label = "Lagoon";
  board.cups = {base, cup};
  board.has_base_coat = true;
  board.next_cup = 2;
  EXPECT_EQ(words_.Glance(board), "Lagoon holds it back.");
  board.next_cup.reset();
  board.may_pour = true;
  EXPECT_EQ(words_.Glance(board), "All match: pour.");
}

// Whole sentences in the string literals of a source file; adjacent literals
// are one.
std::set<std::string> SentencesOf(const std::filesystem::path& file) {
  std::ifstream in(file);
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  std::set<std::string> sentences;
  std::string literal;
  bool any = false;
  const auto close = [&] {
    if (any && literal.size() > 2 && literal.back() == '.' &&
        std::isupper(static_cast<unsigned char>(literal.front())) != 0 &&
        literal.find(' ') != std::string::npos &&
        literal.find('%') == std::string::npos) {
      sentences.insert(literal);
    }
    literal.clear();
    any = false;
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.compare(i, 2, "//") == 0) {
      i = std::min(text.find('\n', i), text.size());
    } else if (text[i] == '\'' && i + 2 < text.size()) {
      i = text.find('\'', text[i + 1] == '\\' ? i + 3 : i + 2);
    } else if (text[i] == '"') {
      any = true;
      for (++i; i < text.size() && text[i] != '"'; ++i) {
        if (text[i] == '\\') ++i;
        literal += text[i];
      }
    } else if (std::isspace(static_cast<unsigned char>(text[i])) == 0) {
      close();
    }
  }
  close();
  return sentences;
}

// What the tests of a film, the session and the bench say unchangingly is in
// the list for the translators.
TEST(EngineSentences, AreAllListed) {
  const std::filesystem::path root(FLOWKIN_SOURCE_DIR);
  const std::set<std::string> listed =
      SentencesOf(root / "app/gui/engine_sentences.cc");
  ASSERT_GT(listed.size(), 50U);
  for (const char* file : {"core/flow/stream_test.cc",
                           "core/flow/level_test.cc",
                           "core/flow/puddle_test.cc",
                           "core/session/palette_session.cc",
                           "core/planning/faults.cc",
                           "core/vision/cell_view.cc",
                           "core/planning/first_mix.cc",
                           "app/usecases/cautions.cc",
                           "app/usecases/cup_of_label.cc",
                           "calibration/store/workshop_store.cc",
                           "app/usecases/bench.cc"}) {
    const std::set<std::string> said = SentencesOf(root / file);
    EXPECT_GT(said.size(), 2U) << file;
    for (const std::string& sentence : said) {
      EXPECT_EQ(listed.count(sentence), 1U) << file << ": " << sentence;
    }
  }
}

// Numbers in the engine's sentences are hers; names and days are left alone.
TEST_F(WordingTest, TellsTheEnginesNumbersHerWay) {
  QLocale::setDefault(QLocale("de_DE"));
  EXPECT_EQ(Wording::Engine("It flows 1.42 times as slowly as 'Coal 2.5' did "
                            "on 2026-03-01, after ASTM D4212, 30 % of 1200."),
            "It flows 1,42 times as slowly as 'Coal 2.5' did on 2026-03-01, "
            "after ASTM D4212, 30 % of 1200.");
  EXPECT_EQ(Wording::Engine("Nobody has measured how it flows."),
            "Nobody has measured how it flows.");
}

/// A cup and a bench that call for every caution at once.
DoseReport DoseWithCautions() {
  DoseRequest request;
  request.cup.volume_ml = 100.0;
  request.cup.tests = {{0.0, 2.5, 0.04}, {30.0, 1.6, 0.04}};
  request.bench = {24.5, 20.0, 150.0, 45.0, 200.0, {0.02}};
  const Result<DoseReport> report = AdviseDose(request, nullptr);
  EXPECT_TRUE(report.has_value());
  return report.has_value() ? *report : DoseReport{};
}

TEST(EngineSentences, WithNumbersAreSaidInHerLanguage) {
  const DoseReport report = DoseWithCautions();
  ASSERT_GE(report.cautions.size(), 6U);
  int no_arguments = 0;
  const QCoreApplication application(no_arguments, nullptr);
  for (const char* language : {"de", "fr"}) {
    QTranslator translator;
    ASSERT_TRUE(translator.load(QString("flowkin_") + language, ":/i18n"));
    QLocale::setDefault(QLocale(language));
    ASSERT_TRUE(QCoreApplication::installTranslator(&translator));
    for (const std::string& caution : report.cautions) {
      // What has no translation keeps its English words.
      EXPECT_EQ(Wording::Engine(caution).indexOf(" the "), -1) << caution;
    }
    const QString room = Wording::Engine(
        "The room is 4.5 degrees C warmer than when the base coat was tested; "
        "test the base coat again.");
    EXPECT_TRUE(room.contains("4,5 °C")) << room.toStdString();
  }
  QLocale::setDefault(QLocale("en_US"));
}

// The main screen keeps to the words of the trade.
TEST_F(WordingTest, SpeaksNoJargon) {
  for (int kind = 0; kind <= static_cast<int>(StepKind::kFilmBaseCoat);
       ++kind) {
    const QString step = words_.Step(CupThatNeeds(static_cast<StepKind>(kind)));
    for (const char* word : {"viscosity", "Pa", "proxy", "sigma", "mm2"}) {
      EXPECT_FALSE(step.contains(word)) << step.toStdString();
    }
  }
}

}  // namespace
}  // namespace flowkin
