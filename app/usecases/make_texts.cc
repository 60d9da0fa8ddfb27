// Turns the window's translations into a table for what has no Qt:
//   make_texts OUT.cc FUNCTION FILE.ts
// Takes the contexts "engine" and "page", without what is not translated yet.

#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <string>

namespace {

std::string Literal(const std::string& text) {
  std::string literal = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') literal += '\\';
    literal += c == '\n' ? std::string("\\n") : std::string(1, c);
  }
  return literal + "\"";
}

/// Throws what Boost's reader throws at a file of another form. The number of
/// texts written.
int Write(const std::string& made,
          const std::string& function,
          const std::string& translations) {
  boost::property_tree::ptree file;
  boost::property_tree::read_xml(translations, file);
  std::ofstream out(made);
  out << "#include \"app/usecases/translated_texts.h\"\n\n"
      << "namespace flowkin {\n\n"
      << "std::span<const TranslatedText> " << function << "() {\n"
      << "  static constexpr TranslatedText kTexts[] = {\n";
  int texts = 0;
  for (const auto& [tag, context] : file.get_child("TS")) {
    if (tag != "context") continue;
    const auto name = context.get<std::string>("name");
    if (name != "engine" && name != "page") continue;
    for (const auto& [kind, message] : context) {
      if (kind != "message") continue;
      const auto& translation = message.get_child("translation");
      // Plural forms lie in children; what is unfinished or gone says its type.
      if (!translation.empty() || translation.data().empty()) continue;
      out << "    {" << Literal(name) << ", "
          << Literal(message.get<std::string>("source")) << ",\n     "
          << Literal(translation.data()) << "},\n";
      ++texts;
    }
  }
  out << "  };\n  return kTexts;\n}\n\n}  // namespace flowkin\n";
  out.close();
  return out ? texts : 0;
}

}  // namespace

int main(int count, char** arguments) {
  if (count != 4) {
    std::cerr << "make_texts OUT.cc FUNCTION FILE.ts\n";
    return EXIT_FAILURE;
  }
  try {
    if (Write(arguments[1], arguments[2], arguments[3]) > 0) {
      return EXIT_SUCCESS;
    }
    std::cerr << arguments[3] << ": no texts, or no room to write\n";
  } catch (const boost::property_tree::ptree_error& e) {
    std::cerr << arguments[3] << ": " << e.what() << '\n';
  }
  return EXIT_FAILURE;
}
