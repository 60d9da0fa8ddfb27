#pragma once

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace flowkin::test {

/// A reference table: comment lines (without the leading '#'), the column
/// names and the cells as text.
struct CsvTable {
  std::vector<std::string> comments;
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;

  /// Index of a column, or -1.
  int Column(const std::string& name) const {
    for (std::size_t i = 0; i < columns.size(); ++i) {
      if (columns[i] == name) return static_cast<int>(i);
    }
    return -1;
  }
  const std::string& Text(std::size_t row, const std::string& column) const {
    return rows.at(row).at(static_cast<std::size_t>(Column(column)));
  }
  double Number(std::size_t row, const std::string& column) const {
    return std::stod(Text(row, column));
  }
};

/// Reads tests/data/`name`; no rows if it is missing. No quoted commas.
inline CsvTable ReadCsv(const std::string& name) {
  CsvTable table;
  std::ifstream file(std::string(FLOWKIN_SOURCE_DIR) + "/tests/data/" + name);
  std::string line;
  while (std::getline(file, line)) {
    if (line.empty()) continue;
    if (line[0] == '#') {
      table.comments.push_back(line.substr(1));
      continue;
    }
    std::vector<std::string> cells;
    std::string cell;
    std::istringstream stream(line);
    while (std::getline(stream, cell, ',')) cells.push_back(cell);
    if (line.back() == ',') cells.emplace_back();
    if (table.columns.empty()) {
      table.columns = cells;
    } else {
      table.rows.push_back(cells);
    }
  }
  return table;
}

}  // namespace flowkin::test
