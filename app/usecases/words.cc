#include "app/usecases/words.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <vector>

#include "app/usecases/sentence.h"
#include "app/usecases/translated_texts.h"
#include "core/planning/units.h"

namespace flowkin {

std::optional<Language> LanguageFromCode(std::string_view code) {
  if (code == "en") return Language::kEnglish;
  if (code == "de") return Language::kGerman;
  if (code == "fr") return Language::kFrench;
  return std::nullopt;
}

std::optional<std::string> Words::Find(std::string_view context,
                                       std::string_view text) const {
  if (language_ == Language::kEnglish) return std::nullopt;
  const std::span<const TranslatedText> texts =
      language_ == Language::kGerman ? GermanTexts() : FrenchTexts();
  const auto found = std::find_if(
      texts.begin(), texts.end(), [&](const TranslatedText& known) {
        return known.text == text && known.context == context;
      });
  if (found == texts.end()) return std::nullopt;
  return std::string(found->translation);
}

std::string Words::HerNumber(std::string text) const {
  if (language_ != Language::kEnglish) {
    std::replace(text.begin(), text.end(), '.', ',');
  }
  return text;
}

std::string Words::Phrase(const char* context, const char* text) const {
  return Find(context, text).value_or(text);
}

std::string Words::Name(const std::string& text) const {
  return Find("engine", text).value_or(text);
}

std::string Words::Engine(const std::string& sentence) const {
  if (const auto whole = Find("engine", sentence)) return *whole;
  const SentenceParts apart = TakeApart(sentence);
  if (apart.parts.empty() || apart.parts.size() > 9) return sentence;
  std::vector<std::string> parts;
  for (const SentenceParts::Part& part : apart.parts) {
    parts.push_back(part.number ? HerNumber(part.text) : part.text);
  }
  return PutTogether(Find("engine", apart.pattern).value_or(apart.pattern),
                     parts);
}

std::string Words::Number(double value) const {
  return HerNumber(Short(value));
}

std::string Words::Percent(double share) const {
  return Number(100.0 * share) + " %";
}

std::string Words::Volume(double ml) const {
  return units_ == AmountUnits::kUs
             ? HerNumber(VolumeText(ml, units_))
             : PutTogether(Phrase("page", "%1 mL"), {Number(ml)});
}

std::string Words::Mass(double g) const {
  return HerNumber(MassText(g, units_));
}

std::string Words::Temperature(double c) const {
  return units_ == AmountUnits::kUs ? Number(FahrenheitFromCelsius(c)) + " °F"
                                    : Number(c) + " °C";
}

std::string Words::Film(double mm) const {
  if (units_ == AmountUnits::kMetric) return Number(mm) + " mm";
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "%.3f in", mm / kMmPerInch);
  return HerNumber(text.data());
}

std::string Words::Area(double m2) const {
  return units_ == AmountUnits::kUs
             ? Number(m2 * 1e6 / (kMmPerInch * kMmPerInch)) + " in²"
             : Number(1e4 * m2) + " cm²";
}

}  // namespace flowkin
