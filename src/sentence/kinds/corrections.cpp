// Corrections and strikes. They take no common clauses: those would belong to the sentence inside.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/inner.h"
#include "sentence/sorts/names.h"

namespace sentence {

using logbook::Corrected;
using logbook::Struck;

constexpr Kind declarations::corrected =
    with_common(kind<Corrected, &Corrected::entry, &Corrected::because, &Corrected::instead>(
                    "corrected", "entry {entry} corrected because {because}: {instead},", {},
                    {"a sentence that stands instead of an earlier one",
                     "2026-03-12 entry K7QXM-123 corrected because \"typed 1.3, was 1.8\": "
                     "2026-03-04 aircraft ZZ-KIT flew 1.8 h, 1 start, 3 landings."}),
                Common::none);
constexpr Kind declarations::struck =
    with_common(kind<Struck, &Struck::entry, &Struck::because>(
                    "struck", "entry {entry} struck because {because},", {},
                    {"an entry that no longer counts",
                     "2026-03-12 entry K7QXM-124 struck because \"entered twice\"."}),
                Common::none);

}  // namespace sentence
