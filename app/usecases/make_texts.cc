// Turns the window's translations into a table for what has no Qt:
//   make_texts OUT.cc FUNCTION FILE.ts
// Takes the contexts "engine" and "page", without what is not translated yet.

#include <array>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>

namespace {

/// What lies between `<tag ...>` and `</tag>` from `*at` on; moves `*at` behind
/// it. False where there is none before `end`.
bool Element(const std::string& file,
             const std::string& tag,
             std::size_t end,
             std::size_t* at,
             std::string* content,
             std::string* attributes) {
  const std::size_t open = file.find("<" + tag, *at);
  if (open == std::string::npos || open >= end) return false;
  const std::size_t close = file.find('>', open);
  const std::size_t stop = file.find("</" + tag + ">", close);
  if (close == std::string::npos || stop == std::string::npos) return false;
  const std::size_t name_end = open + 1 + tag.size();
  *attributes = file.substr(name_end, close - name_end);
  *content = file.substr(close + 1, stop - close - 1);
  *at = stop;
  return true;
}

std::string WithoutEntities(std::string text) {
  constexpr std::array<std::pair<const char*, const char*>, 5> kEntities = {
      {{"&lt;", "<"},
       {"&gt;", ">"},
       {"&apos;", "'"},
       {"&quot;", "\""},
       {"&amp;", "&"}}};  // last, or it would make new ones
  for (const auto& [entity, letter] : kEntities) {
    for (std::size_t at = text.find(entity); at != std::string::npos;
         at = text.find(entity, at + 1)) {
      text.replace(at, std::string_view(entity).size(), letter);
    }
  }
  return text;
}

std::string Literal(const std::string& text) {
  std::string literal = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') literal += '\\';
    literal += c == '\n' ? std::string("\\n") : std::string(1, c);
  }
  return literal + "\"";
}

}  // namespace

int main(int count, char** arguments) {
  if (count != 4) {
    std::cerr << "make_texts OUT.cc FUNCTION FILE.ts\n";
    return EXIT_FAILURE;
  }
  std::ifstream in(arguments[3]);
  const std::string file{std::istreambuf_iterator<char>(in), {}};
  std::ofstream out(arguments[1]);
  out << "#include \"app/usecases/translated_texts.h\"\n\n"
      << "namespace flowkin {\n\n"
      << "std::span<const TranslatedText> " << arguments[2] << "() {\n"
      << "  static constexpr TranslatedText kTexts[] = {\n";
  int texts = 0;
  std::string attributes;
  for (std::size_t from = file.find("<context>"); from != std::string::npos;
       from = file.find("<context>", from + 1)) {
    const std::size_t end = file.find("</context>", from);
    std::size_t at = from;
    std::string name;
    if (!Element(file, "name", end, &at, &name, &attributes)) continue;
    if (name != "engine" && name != "page") continue;
    std::string source;
    std::string translation;
    while (Element(file, "source", end, &at, &source, &attributes) &&
           Element(file, "translation", end, &at, &translation, &attributes)) {
      if (translation.empty() || !attributes.empty()) continue;
      out << "    {" << Literal(name) << ", "
          << Literal(WithoutEntities(source)) << ",\n     "
          << Literal(WithoutEntities(translation)) << "},\n";
      ++texts;
    }
  }
  out << "  };\n  return kTexts;\n}\n\n}  // namespace flowkin\n";
  out.close();
  if (texts == 0 || !out) {
    std::cerr << arguments[3] << ": no texts, or no room to write\n";
    return EXIT_FAILURE;
  }
  return EXIT_SUCCESS;
}
