// tests/command/world.h: a world for commands inside the test: a folder of its own, in which the
// test then stands, a clock that the test turns, and what was said on both streams.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "command/command_line.h"
#include "store/trouble.h"
#include "words/words.h"

namespace desk {

struct Answer {
  int code = 0;
  std::string out;
  std::string err;
  std::string all() const { return out + err; }
};

class World {
 public:
  World() {
    std::string name = (std::filesystem::temp_directory_path() / "timeworn-XXXXXX").string();
    folder_ = ::mkdtemp(name.data());
    std::filesystem::current_path(folder_);
  }
  ~World() {
    std::filesystem::current_path(before_);
    std::filesystem::remove_all(folder_);
  }
  World(const World&) = delete;
  World& operator=(const World&) = delete;

  std::string path(const std::string& name) const { return folder_ + "/" + name; }
  void turn_clock(std::int64_t seconds) { now_ += seconds; }
  quantity::Instant now() const { return quantity::Instant::of(now_); }

  // Runs one command as main does.
  Answer type(const std::vector<std::string>& words, const std::string& input = "") const {
    std::istringstream in(input);
    std::ostringstream out;
    std::ostringstream err;
    command::World world;
    world.in = &in;
    world.out = &out;
    world.err = &err;
    world.now = now();
    world.today = quantity::utc_day(world.now);
    world.book_path = path("the.book");
    world.state_folder = path("state");
    world.config_folder = path("config");
    Answer answer;
    answer.code = command::run(words, world);
    answer.out = out.str();
    answer.err = err.str();
    return answer;
  }

 private:
  std::filesystem::path before_ = std::filesystem::current_path();
  std::string folder_;
  std::int64_t now_ = 1'772'700'000;  // 2026-03-05T08:40:00Z
};

}  // namespace desk
