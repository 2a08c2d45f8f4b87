#pragma once
// Paper without aviation: what a page says, before anyone decides how it looks.
// A document is built once and rendered as text, HTML, JSON or CSV; each cell says the same in all.

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "document/chart/chart.h"

namespace document {

// How a figure stands. It is always written as a word; colour may only repeat it.
enum class State { none, ok, soon, due, over, not_known };

// The word that people and machines read: "ok" … "not known"; nothing for none.
std::string_view word(State state);

struct Cell {
  std::string shown;  // for people, with its unit where the column does not name it
  std::string exact;  // for machines: digits with sign and point (-12.5), an ISO day, or nothing
  std::string unit;   // of the exact value; nothing for a bare number or a day
  State state = State::none;
};

enum class Align { left, right };

struct Column {
  std::string key;   // for machines; never changed once published, unique in its table
  std::string name;  // for people; if all names of a table are empty, it is shown without a head
  Align align = Align::left;
};

struct Heading {
  std::string text;
};

struct Paragraph {
  std::string text;
};

struct Table {
  std::string key;  // names the table to machines; unique in its document
  std::vector<Column> columns;
  std::vector<std::vector<Cell>> rows;  // each as long as columns
  std::string if_empty;                 // the sentence that stands in place of rows
};

struct Note {
  std::string text;
};

struct SignatureBlock {
  std::string statement;            // quoted above the lines; may be empty
  std::vector<std::string> labels;  // a line to fill in by hand behind each
};

using Block = std::variant<Heading, Paragraph, Table, Chart, Note, SignatureBlock>;

struct Document {
  std::string title;
  std::vector<std::string> head;  // as of which day, what was counted
  std::vector<Block> blocks;
};

// What is wrong with the building of a document: a row of the wrong length, a key that is empty,
// taken or not made of a-z, 0-9 and _, an exact value that is no number and no day, a table with
// neither rows nor if_empty, and the faults of its charts. Each fault is one of our own bugs, said
// for developers.
std::vector<std::string> faults(const Document& document);

// The charts of the document in their order.
std::vector<const Chart*> charts_of(const Document& document);

}  // namespace document
