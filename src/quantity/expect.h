// quantity/expect.h: a promise that the program makes to itself. A broken promise is a fault of
// ours: the program stops before anything is written, in every build.
#pragma once

namespace quantity {

// Thrown by EXPECT; caught only in main, which says so in a sentence and exits with 70.
class BrokenPromise {
 public:
  BrokenPromise(const char* promise, const char* file, int line)
      : promise_(promise), file_(file), line_(line) {}
  const char* promise() const { return promise_; }
  const char* file() const { return file_; }
  int line() const { return line_; }

 private:
  const char* promise_;
  const char* file_;
  int line_;
};

[[noreturn]] void broken(const char* promise, const char* file, int line);

}  // namespace quantity

#define EXPECT(promise) \
  ((promise) ? static_cast<void>(0) : ::quantity::broken(#promise, __FILE__, __LINE__))
