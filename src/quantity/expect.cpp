#include "quantity/expect.h"

namespace quantity {

void broken(const char* promise, const char* file, int line) {
  throw BrokenPromise(promise, file, line);
}

}  // namespace quantity
