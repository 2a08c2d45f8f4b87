// That entries were signed. The sentence names them; the frame's refers holds their digests.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/figures.h"
#include "sentence/sorts/names.h"

namespace sentence {

using logbook::Signed;
using logbook::SignedHow;

namespace {

// The longer words first: no word may hide a longer one that begins with it.
constexpr Word how_words[] = {word(SignedHow::on_paper, "signed on paper"),
                              word(SignedHow::with_key, "signed")};

}  // namespace

template <>
inline constexpr Sort sort_of<SignedHow> = words<SignedHow>("signed-how", how_words);

namespace {

constexpr Clause signed_clauses[] = {
    clause<&Signed::through>("through {through}", "every entry up to this one, of the same base"),
    clause<&Signed::also>("also entry {also}", "a further entry"),
    clause<&Signed::page>("page {page}", "the page that was signed, if it was paper"),
    clause<&Signed::by>("by {by}", "who signed"),
    clause<&Signed::certificate>("certificate {certificate}", "the number of the certificate"),
    clause<&Signed::kind>("kind {kind}", "what the certificate is for"),
    clause<&Signed::statement>("statement {statement}", "what the person states by it")};

}  // namespace

constexpr Kind declarations::signed_entries =
    with_common(kind<Signed, &Signed::entry, &Signed::how>(
                    "signed", "entry {entry} {how},", signed_clauses,
                    {"that entries were signed, with a key or on paper",
                     "2026-03-10 entry K7QXM-131 signed, through K7QXM-134, "
                     "also entry K7QXM-140, by \"B. Quill\", certificate \"A-1234\", "
                     "kind \"mechanic\", statement \"done as manual 5-20 asks\".\n"
                     "2026-03-10 entry K7QXM-131 signed on paper, page \"12\", "
                     "by \"B. Quill\"."}),
                Common::without_by);

}  // namespace sentence
