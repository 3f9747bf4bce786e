#include "core/catalogue/words.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace peelpack::catalogue {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

/// Clipped speech of operating rooms that means one word wherever it stands (common practice, no source). Sorted.
constexpr std::array clipped = std::to_array<Pair>({
    {"abd", "abdominal"},
    {"abdo", "abdominal"},
    {"amp", "amputation"},
    {"angio", "angiogram"},
    {"ant", "anterior"},
    {"appy", "appendectomy"},
    {"arthro", "arthroscopy"},
    {"arthroscopic", "arthroscopy"},
    {"aug", "augmentation"},
    {"bil", "bilateral"},
    {"bilat", "bilateral"},
    {"bleph", "blepharoplasty"},
    {"bronch", "bronchoscopy"},
    {"bx", "biopsy"},
    {"ca", "cancer"},
    {"cerv", "cervical"},
    {"chole", "cholecystectomy"},
    {"clav", "clavicle"},
    {"crani", "craniotomy"},
    {"cysto", "cystoscopy"},
    {"decomp", "decompression"},
    {"diag", "diagnostic"},
    {"disc", "disk"},
    {"dx", "diagnostic"},
    {"endo", "endoscopic"},
    {"eua", "exam under anesthesia"},
    {"exc", "excision"},
    {"exlap", "exploratory laparotomy"},
    {"exp", "exploratory"},
    {"fem", "femoral"},
    {"fx", "fracture"},
    {"gb", "gallbladder"},
    {"hyst", "hysterectomy"},
    {"hystero", "hysteroscopy"},
    {"inguin", "inguinal"},
    {"l", "left"},
    {"lac", "laceration"},
    {"lami", "laminectomy"},
    {"lap", "laparoscopic"},
    {"laparoscopy", "laparoscopic"},
    {"lat", "lateral"},
    {"lipo", "liposuction"},
    {"lob", "lobectomy"},
    {"lt", "left"},
    {"lumpx", "lumpectomy"},
    {"mand", "mandible"},
    {"mandibular", "mandible"},
    {"mastec", "mastectomy"},
    {"max", "maxillary"},
    {"med", "medial"},
    {"meniscal", "meniscus"},
    {"neph", "nephrectomy"},
    {"nx", "nephrectomy"},
    {"ortho", "orthopedic"},
    {"osteo", "osteotomy"},
    {"panc", "pancreatic"},
    {"perc", "percutaneous"},
    {"pop", "popliteal"},
    {"post", "posterior"},
    {"prox", "proximal"},
    {"pts", "patients"},
    {"r", "right"},
    {"rad", "radical"},
    {"recon", "reconstruction"},
    {"reconstruct", "reconstruction"},
    {"robo", "robotic"},
    {"robot", "robotic"},
    {"robotically", "robotic"},
    {"roto", "rotator"},
    {"rt", "right"},
    {"scope", "arthroscopy"},
    {"subtot", "subtotal"},
    {"supracond", "supracondylar"},
    {"tib", "tibial"},
    {"tibia", "tibial"},
    {"tot", "total"},
    {"trach", "tracheostomy"},
    {"tracheotomy", "tracheostomy"},
    {"transplantation", "transplant"},
    {"tx", "transplant"},
    {"umb", "umbilical"},
    {"uni", "unilateral"},
    {"vag", "vaginal"},
    {"vent", "ventral"},
    {"xplant", "transplant"},
});

/// Words for the same thing where the trade uses either in a procedure's name. Sorted.
constexpr std::array sameThing = std::to_array<Pair>({
    {"arthroplasty", "replacement"},
    {"caesarean", "cesarean"},
    {"carcinoma", "cancer"},
    {"cesarian", "cesarean"},
    {"excise", "excision"},
    {"extraction", "removal"},
    {"femur", "femoral"},
    {"harvesting", "harvest"},
    {"humeral", "humerus"},
    {"implantation", "implant"},
    {"insert", "insertion"},
    {"malignancy", "cancer"},
    {"pinned", "pinning"},
    {"placed", "placement"},
    {"prosthetic", "prosthesis"},
    {"removed", "removal"},
    {"remove", "removal"},
    {"repaired", "repair"},
    {"replaced", "replacement"},
    {"replace", "replacement"},
    {"resect", "resection"},
    {"revise", "revision"},
    {"stenting", "stent"},
    {"vaginally", "vaginal"},
});

constexpr std::array sides = std::to_array<std::string_view>(
    {"b/l", "bilateral", "l", "left", "lt", "od", "os", "ou", "r", "right", "rt", "unilateral"});

constexpr std::array fillers = std::to_array<std::string_view>(
    {"a",  "an",        "and", "at",      "by",  "case", "for",   "from",  "in",  "into", "of", "on",
     "or", "procedure", "s/p", "surgery", "the", "to",   "under", "using", "via", "w",    "w/", "with"});

template <class Table>
std::string_view lookUp(const Table& table, std::string_view word)
{
    const auto found = std::lower_bound(table.begin(), table.end(), word,
                                        [](const Pair& pair, std::string_view text) { return pair.first < text; });
    return found != table.end() && found->first == word ? found->second : std::string_view();
}

template <class Table>
bool contains(const Table& table, std::string_view word)
{
    return std::find(table.begin(), table.end(), word) != table.end();
}

void replaceAll(std::string& text, std::string_view from, std::string_view to)
{
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
        text.replace(at, from.size(), to);
    }
}

/// British spelling to US spelling, by rule: applied to names and queries alike, so that a wrong hit does no harm.
void americanize(std::string& word)
{
    if (word.size() < 5) {
        return;
    }
    replaceAll(word, "ae", "e");
    replaceAll(word, "oe", "e");
    replaceAll(word, "isation", "ization");
    if (word.ends_with("our")) {
        word.replace(word.size() - 3, 3, "or");
    } else if (word.ends_with("tre") || word.ends_with("bre")) {
        word.replace(word.size() - 2, 2, "er");
    } else if (word.ends_with("ise")) {
        word.replace(word.size() - 3, 3, "ize");
    }
}

void singularize(std::string& word)
{
    const auto cut = [&](std::size_t count) { word.resize(word.size() - count); };
    if (word.size() < 4 || !word.ends_with('s') || word.ends_with("ss") || word.ends_with("us") ||
        word.ends_with("is")) {
        return;
    }
    if (word.ends_with("ies") && word.size() > 5) {
        cut(3);
        word += 'y';
    } else if (word.ends_with("sses") || word.ends_with("xes") || word.ends_with("ches") || word.ends_with("shes")) {
        cut(2);
    } else {
        cut(1);
    }
}

std::string canonicalOf(const std::string& typed)
{
    std::string word = typed;
    if (const std::string_view whole = lookUp(clipped, word); !whole.empty()) {
        word = whole;
    }
    americanize(word);
    singularize(word);
    if (const std::string_view same = lookUp(sameThing, word); !same.empty()) {
        word = same;
    }
    if (const std::string_view whole = lookUp(clipped, word); !whole.empty()) {
        word = whole;
    }
    return word;
}

bool isWordByte(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

/// What stands as one word though it has a sign in it.
std::size_t signedWord(std::string_view text, std::size_t at)
{
    for (const std::string_view known : {"s/p", "b/l", "w/o", "w/"}) {
        const std::size_t end = at + known.size();
        if (text.substr(at, known.size()) == known && (known == "w/" || end >= text.size() || !isWordByte(text[end]))) {
            return known.size();
        }
    }
    return 0;
}

void addWord(std::vector<Word>& words, std::string typed)
{
    Word word;
    word.canonical = canonicalOf(typed);
    if (contains(fillers, typed)) {
        word.kind = Word::Kind::Filler;
    } else if (contains(sides, typed) || contains(sides, word.canonical)) {
        word.kind = Word::Kind::Side;
    }
    word.typed = std::move(typed);
    if (const std::size_t space = word.canonical.find(' '); space != std::string::npos) {
        // Clipped speech for several words: each is a word of its own.
        for (const std::string_view piece : base::split(word.canonical, ' ')) {
            addWord(words, std::string(piece));
        }
        return;
    }
    words.push_back(std::move(word));
}

} // namespace

std::vector<Word> wordsOf(std::string_view text)
{
    const std::string lower = base::foldCaseAndSpaces(text);
    std::vector<Word> words;
    for (std::size_t at = 0; at < lower.size();) {
        if (!isWordByte(lower[at])) {
            ++at;
            continue;
        }
        std::size_t length = signedWord(lower, at);
        if (length == 0) {
            const auto joins = [&](std::size_t i) {
                return (lower[i] == '&' || lower[i] == '\'') && i + 1 < lower.size() && isWordByte(lower[i + 1]);
            };
            while (at + length < lower.size() && (isWordByte(lower[at + length]) || joins(at + length))) {
                ++length;
            }
        }
        std::string typed = lower.substr(at, length);
        std::erase(typed, '\'');
        addWord(words, std::move(typed));
        at += length;
    }
    return words;
}

std::string squeezed(const std::vector<Word>& words, bool keepSides)
{
    std::string out;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool between =
            i > 0 && i + 1 < words.size() && words[i - 1].typed.size() == 1 && words[i + 1].typed.size() == 1;
        if (words[i].typed == "and" && between) {
            out += '&';
        } else if (words[i].kind == Word::Kind::Content) {
            out += words[i].typed;
        } else if (words[i].kind == Word::Kind::Side && (keepSides || between)) {
            out += between ? words[i].typed : words[i].canonical;
        }
    }
    return out;
}

} // namespace peelpack::catalogue
