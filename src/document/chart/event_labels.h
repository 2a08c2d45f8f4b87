#pragma once
// Labels of events above a plot, staggered in rows and shortened so that none touches another and
// no line of an event runs through the label of another. The whole words stand in the key.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace document {

struct EventName {
  std::size_t number;  // by which the key finds it
  double x;            // where its line stands
  std::string label;
};

struct EventLabel {
  std::size_t number;
  double x;
  std::string words;  // "3 washed 11 Ma…", or the number alone
  double left, right;
  std::size_t row;  // 0 is nearest to the plot
};

struct LabelRoom {
  double right;                              // no label reaches farther
  double gap;                                // between a line and its label
  std::size_t (*measure)(std::string_view);  // how wide words are
  std::size_t most_columns;                  // of one label; 0 for numbers alone
  std::size_t most_rows;                     // of words; numbers alone may take more
};

// The words cut to so many columns at a whole character, with an ellipsis where anything is gone.
std::string shortened(std::string_view words, std::size_t columns);

// One label for each name, in the same order. If the words of one find no room, all are numbers
// alone.
std::vector<EventLabel> placed_labels(const std::vector<EventName>& names, const LabelRoom& room);

// How many rows they take.
std::size_t rows_of(const std::vector<EventLabel>& labels);

}  // namespace document
