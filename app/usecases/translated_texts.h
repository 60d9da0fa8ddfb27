#pragma once

#include <span>

#include "app/usecases/words.h"

namespace flowkin {

// Written by make_texts.cc at build time.
std::span<const TranslatedText> GermanTexts();
std::span<const TranslatedText> FrenchTexts();

}  // namespace flowkin
