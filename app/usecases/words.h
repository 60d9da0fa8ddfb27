#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "app/usecases/amounts.h"

namespace flowkin {

enum class Language { kEnglish, kGerman, kFrench };
/// "en", "de" or "fr".
std::optional<Language> LanguageFromCode(std::string_view code);

/// One text and how it is said in another language.
struct TranslatedText {
  std::string_view context;
  std::string_view text;
  std::string_view translation;
};

/// Words and numbers of a printed page in a language, without Qt: the
/// translations are those of the window (app/gui/i18n), compiled in.
class Words {
 public:
  explicit Words(Language language = Language::kEnglish,
                 AmountUnits units = AmountUnits::kMetric)
      : language_(language), units_(units) {}

  AmountUnits units() const { return units_; }

  /// `text` in her language. Both must be literals: the translators' tool finds
  /// the texts by this call.
  std::string Phrase(const char* context, const char* text) const;
  /// What the engine calls something: a role, a fault, a technique. Hers stay
  /// as they are.
  std::string Name(const std::string& text) const;
  /// What the engine says, with names and numbers in it.
  std::string Engine(const std::string& sentence) const;

  std::string Number(double value) const;
  std::string Percent(double share) const;
  std::string Volume(double ml) const;
  std::string Mass(double g) const;
  std::string Temperature(double c) const;
  std::string Film(double mm) const;
  std::string Area(double m2) const;

 private:
  std::optional<std::string> Find(std::string_view context,
                                  std::string_view text) const;
  std::string HerNumber(std::string text) const;

  Language language_;
  AmountUnits units_;
};

}  // namespace flowkin
