// reckon/wide.h: products of two amounts, which 64 bits need not hold. The compiler's own type.
#pragma once

namespace reckon {

__extension__ typedef __int128 Wide;

}  // namespace reckon
