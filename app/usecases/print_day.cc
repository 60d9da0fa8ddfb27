#include "app/usecases/print_day.h"

#include <utility>

#include "app/usecases/label_document.h"
#include "app/usecases/load_photo.h"
#include "app/usecases/sentence.h"

namespace flowkin {

Result<DayAtBench> ReadDay(const std::string& store_path, SessionId session) {
  const Result<Journal> journal = Journal::Open(store_path);
  if (!journal) return journal.error();
  Result<JournalPage> page = journal->Page(session);
  if (!page) return page.error();
  Result<Bench> bench = Bench::Open(store_path);
  if (!bench) return bench.error();
  if (auto opened = bench->OpenSession(session); !opened) {
    return opened.error();
  }
  Result<Board> board = bench->State(page->line.last);
  if (!board) return board.error();
  return DayAtBench{*std::move(page), *std::move(board)};
}

std::vector<BatchLabel> LabelsOf(const DayAtBench& day) {
  std::vector<BatchLabel> labels;
  std::string base_on;
  for (const BoardCup& cup : day.board.cups) {
    const BenchCup* known = day.page.session.FindCup(cup.id);
    if (cup.base_coat && known != nullptr && !known->tests.empty()) {
      base_on = FormatUtc(known->tests.back().at).substr(0, 10);
    }
  }
  for (const BoardCup& cup : day.board.cups) {
    BatchLabel label;
    label.name = cup.details.label;
    label.role = PourRoleName(cup.base_coat ? PourRole::kBaseCoat
                              : cup.details.role == CupRole::kActivator
                                  ? PourRole::kActivator
                                  : PourRole::kColour);
    label.brand = cup.details.paint.brand;
    label.colour = cup.details.paint.colour;
    label.volume_ml = cup.volume_now_ml;
    const BenchCup* known = day.page.session.FindCup(cup.id);
    if (known != nullptr && known->WaterMl() > 0.0) {
      label.water_ml = known->WaterMl();
      label.water_share = cup.water_share;
    }
    // What goes without saying is left out, for a code of larger dots.
    if (cup.details.target_ratio != 1.0) {
      label.target = cup.details.target_ratio;
    }
    if (cup.details.thinner != ThinnerKind::kWater) {
      label.thinner = ThinnerKindName(cup.details.thinner);
    }
    label.mixed_on = FormatUtc(day.page.line.begun).substr(0, 10);
    if (cup.comparison && cup.comparison->outcome == Outcome::kMeasured &&
        !cup.before_addition) {
      label.ratio = Span{cup.comparison->interval.low,
                         cup.comparison->ratio.Ratio(),
                         cup.comparison->interval.high};
      label.base_on = base_on;
    }
    label.temperature_c = day.board.room_c;
    label.hazard = "Paint: follow its label. No food container.";
    label.code = LabelDocument(label).dump(
        -1, ' ', true, Json::error_handler_t::replace);
    labels.push_back(std::move(label));
  }
  return labels;
}

DayPhotos PhotosOf(const JournalPage& page, const Words& words) {
  constexpr int kMost_px = 1600;  // about 220 to the inch across the page
  DayPhotos photos;
  const auto add = [&](const std::string& path,
                       std::string caption,
                       const std::string& text) {
    Result<Photo> photo = LoadPhoto(path, kMost_px);
    if (!photo) {
      photos.lost.push_back(photo.error().message);
      return;
    }
    if (!text.empty()) {
      caption = PutTogether(words.Phrase("page", "%1: %2"), {caption, text});
    }
    photo->caption = std::move(caption);
    photos.photos.push_back(*std::move(photo));
  };
  const BenchJournal& journal = page.session.journal();
  for (const BenchJournal::Photo& kept : journal.photos) {
    add(kept.photo.path,
        words.Name(PhotoKindName(kept.photo.kind)),
        kept.photo.text);
  }
  for (const BenchJournal::Cells& kept : journal.cells) {
    if (!kept.test.photo.empty()) {
      add(kept.test.photo,
          PutTogether(words.Phrase("page", "cell test, %1"),
                      {words.Name(CellsSeenName(kept.test.seen))}),
          kept.test.text);
    }
  }
  return photos;
}

}  // namespace flowkin
