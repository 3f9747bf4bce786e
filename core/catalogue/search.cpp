#include "core/catalogue/search.h"

#include "core/catalogue/slips.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace peelpack::catalogue {
namespace {

// How much a word fits that is not typed exactly so. Tuned on the project's own queries; only their order is a rule:
// exact before partly typed before slips.
constexpr double fitExact = 1.0;
constexpr double fitCanonical = 0.97;
constexpr double fitPartlyBase = 0.62;
constexpr double fitPartlyGrowth = 0.30;
constexpr double partlyNotLast = 0.95;
constexpr double fitOneSlip = 0.72;
constexpr double fitTwoSlips = 0.60;

constexpr double coverageShare =
    0.74; // of the score: how much of what was typed is there; the rest: how much of the name
constexpr double shorthandBonus = 0.60;
constexpr double nameBonus = 0.45;
constexpr double synonymBonus = 0.42;
constexpr double acrossFactor = 0.90; // words found in different names of a procedure
constexpr double priorOfAName = 0.008;
constexpr double unaskedUnusual = 0.05;
constexpr double laterMeaning = 0.01; // a shorthand further back in the list of its procedure
constexpr double leastScore = 0.30;
constexpr std::size_t mostWords = 12;

/// Words that say how a procedure is approached: somebody who leaves them out may mean any.
constexpr std::array approaches = std::to_array<std::string_view>(
    {"laparoscopic", "robotic", "open", "endoscopic", "thoracoscopic", "percutaneous", "endovascular", "vats"});

/// Words for a second operation or an unusual patient: somebody who means that says so.
constexpr std::array unusual = std::to_array<std::string_view>(
    {"aneurysm", "aspiration", "bilateral", "biopsy",    "breech",   "closure",      "dilation", "exchange", "infected",
     "left",     "ligation",   "pediatric", "recurrent", "redo",     "removal",      "reversal", "revision", "right",
     "robotic",  "seton",      "staged",    "subtotal",  "takedown", "thrombectomy", "trial",    "twin"});

bool isUnusual(std::string_view word)
{
    return std::find(unusual.begin(), unusual.end(), word) != unusual.end();
}

bool isApproach(std::string_view word)
{
    return std::find(approaches.begin(), approaches.end(), word) != approaches.end();
}

} // namespace

Search::Search(const Catalogue& catalogue) : m_catalogue(catalogue)
{
    const std::vector<Procedure>& procedures = catalogue.procedures();
    m_prior.resize(procedures.size());
    for (std::uint32_t i = 0; i < procedures.size(); ++i) {
        const Procedure& procedure = procedures[i];
        addPhrase(i, procedure.name, false, true);
        for (const std::string& synonym : procedure.synonyms) {
            addPhrase(i, synonym, false, false);
        }
        for (const std::string& shorthand : procedure.shorthand) {
            addPhrase(i, shorthand, true, false);
            m_phrases.back().place =
                std::min<std::uint32_t>(4, static_cast<std::uint32_t>(&shorthand - procedure.shorthand.data()));
        }
        const std::size_t names = std::min<std::size_t>(10, procedure.synonyms.size() + procedure.shorthand.size());
        m_prior[i] = priorOfAName * static_cast<double>(names);
    }
    for (Spelling& spelling : m_spellings) {
        const auto total = static_cast<double>(m_phrases.size());
        spelling.weight = std::log(1.0 + total / static_cast<double>(spelling.phrases.size()));
    }
    for (Phrase& phrase : m_phrases) {
        phrase.weight = 0;
        phrase.approachWeight = 0;
        for (const std::uint32_t word : phrase.words) {
            phrase.weight += m_spellings[word].weight;
            phrase.approachWeight += isApproach(m_spellings[word].text) ? m_spellings[word].weight : 0;
            if (isUnusual(m_spellings[word].text)) {
                phrase.unusual.push_back(word);
            }
        }
    }
    m_alphabetical.resize(m_spellings.size());
    for (std::uint32_t i = 0; i < m_alphabetical.size(); ++i) {
        m_alphabetical[i] = i;
    }
    std::sort(m_alphabetical.begin(), m_alphabetical.end(),
              [&](std::uint32_t a, std::uint32_t b) { return m_spellings[a].text < m_spellings[b].text; });
    m_fitOfPhrase.assign(mostWords, std::vector<float>(m_phrases.size(), 0));
    m_fitOfProcedure.assign(mostWords, std::vector<float>(procedures.size(), 0));
    m_phraseTouched.assign(m_phrases.size(), 0);
    m_procedureTouched.assign(procedures.size(), 0);
    m_score.assign(procedures.size(), 0);
    m_scoreText.assign(procedures.size(), 0);
}

std::uint32_t Search::spellingOf(const std::string& text)
{
    const auto [at, fresh] = m_spellingByText.emplace(text, static_cast<std::uint32_t>(m_spellings.size()));
    if (fresh) {
        m_spellings.emplace_back();
        m_spellings.back().text = text;
    }
    return at->second;
}

void Search::addPhrase(std::uint32_t procedure, const std::string& text, bool isShorthand, bool isName)
{
    const auto number = static_cast<std::uint32_t>(m_phrases.size());
    Phrase phrase{procedure, static_cast<std::uint32_t>(m_texts.size()), isShorthand, isName, 0, 0, 0, {}, {}};
    m_texts.push_back(text);
    const std::vector<Word> words = wordsOf(text);
    for (const Word& word : words) {
        if (word.kind == Word::Kind::Filler) {
            continue;
        }
        const std::uint32_t spelling = spellingOf(word.canonical);
        if (std::find(phrase.words.begin(), phrase.words.end(), spelling) == phrase.words.end()) {
            phrase.words.push_back(spelling);
            m_spellings[spelling].phrases.push_back(number);
        }
        // Also as it stands there, for somebody who has typed only its beginning.
        std::vector<std::uint32_t>& asItStands = m_spellings[spellingOf(word.typed)].phrases;
        if (asItStands.empty() || asItStands.back() != number) {
            asItStands.push_back(number);
        }
    }
    m_bySqueezed[squeezed(words, true)].push_back(number);
    m_phrases.push_back(std::move(phrase));
}

std::vector<Search::Asked> Search::ask(const std::vector<Word>& words) const
{
    std::vector<Asked> asked;
    for (std::size_t i = 0; i < words.size() && asked.size() < mostWords; ++i) {
        const bool last = i + 1 == words.size();
        if (words[i].kind == Word::Kind::Filler && !(last && words.size() == 1)) {
            continue;
        }
        Asked one;
        one.word = words[i];
        one.last = last;
        fit(one);
        // A word that stands nowhere weighs as much as a rare one: what it was meant to say is missed.
        one.weight = std::log(1.0 + static_cast<double>(m_phrases.size()) / 8.0);
        double best = 0;
        for (const auto& [spelling, fits] : one.spellings) {
            if (fits > best) {
                best = fits;
                one.weight = m_spellings[spelling].weight;
            }
        }
        if (one.word.kind == Word::Kind::Side || (one.word.typed.size() == 1 && !one.last)) {
            one.weight *= 0.1;
        }
        asked.push_back(std::move(one));
    }
    return asked;
}

/// The spellings that the word may stand for.
void Search::fit(Asked& asked) const
{
    const auto add = [&](std::uint32_t spelling, double fits) {
        for (auto& [known, knownFit] : asked.spellings) {
            if (known == spelling) {
                knownFit = std::max(knownFit, fits);
                return;
            }
        }
        asked.spellings.emplace_back(spelling, fits);
    };
    bool whole = false;
    if (const auto found = m_spellingByText.find(asked.word.canonical); found != m_spellingByText.end()) {
        add(found->second, asked.word.typed == asked.word.canonical ? fitExact : fitCanonical);
        whole = true;
    }
    if (const auto found = m_spellingByText.find(asked.word.typed); found != m_spellingByText.end()) {
        add(found->second, fitExact);
        whole = true;
    }
    // Partly typed: all spellings that begin so.
    for (const std::string* begin : {&asked.word.typed, &asked.word.canonical}) {
        if (begin->size() < 2 && !asked.last) {
            continue;
        }
        auto at = std::lower_bound(
            m_alphabetical.begin(), m_alphabetical.end(), *begin,
            [&](std::uint32_t spelling, const std::string& text) { return m_spellings[spelling].text < text; });
        for (; at != m_alphabetical.end() && m_spellings[*at].text.starts_with(*begin); ++at) {
            const std::string& text = m_spellings[*at].text;
            if (text.size() > begin->size()) {
                const double share = static_cast<double>(begin->size()) / static_cast<double>(text.size());
                add(*at, (fitPartlyBase + fitPartlyGrowth * share) * (asked.last ? 1.0 : partlyNotLast));
            }
        }
    }
    if (!whole) {
        fitSlips(asked);
    }
}

void Search::fitSlips(Asked& asked) const
{
    const std::string& typed = asked.word.canonical;
    const std::size_t most = slipsAllowed(typed.size());
    if (most == 0) {
        return;
    }
    for (std::uint32_t i = 0; i < m_spellings.size(); ++i) {
        const std::string& text = m_spellings[i].text;
        if (text.size() < 5 || (text.front() != typed.front() && text.front() != typed[1])) {
            continue;
        }
        std::size_t slips = slipsBetween(typed, text, false, most);
        double penalty = 1.0;
        if (slips > most && typed.size() < text.size()) {
            slips = slipsBetween(typed, text, true, std::min<std::size_t>(most, typed.size() >= 8 ? 2 : 1));
            penalty = 0.93;
        }
        if (slips > 0 && slips <= most) {
            asked.spellings.emplace_back(i, (slips == 1 ? fitOneSlip : fitTwoSlips) * penalty);
        }
    }
}

std::vector<Hit> Search::find(std::string_view text, std::size_t most)
{
    const std::vector<Word> words = wordsOf(text);
    const std::vector<Asked> asked = ask(words);
    if (asked.empty()) {
        return {};
    }
    bool approachAsked = false;
    for (std::size_t i = 0; i < asked.size(); ++i) {
        approachAsked = approachAsked || isApproach(asked[i].word.canonical);
        for (const auto& [spelling, fits] : asked[i].spellings) {
            for (const std::uint32_t number : m_spellings[spelling].phrases) {
                if (m_phraseTouched[number] == 0) {
                    m_phraseTouched[number] = 1;
                    m_touchedPhrases.push_back(number);
                }
                float& ofPhrase = m_fitOfPhrase[i][number];
                if (static_cast<float>(fits) > ofPhrase) {
                    ofPhrase = static_cast<float>(fits);
                }
                const std::uint32_t procedure = m_phrases[number].procedure;
                if (m_procedureTouched[procedure] == 0) {
                    m_procedureTouched[procedure] = 1;
                    m_touchedProcedures.push_back(procedure);
                }
                m_fitOfProcedure[i][procedure] = std::max(m_fitOfProcedure[i][procedure], static_cast<float>(fits));
            }
        }
    }
    scorePhrases(asked, approachAsked);
    scoreAcrossPhrases(asked);
    offerExact(squeezed(words, false));
    offerExact(squeezed(words, true));
    return best(most);
}

/// What was typed is, letter by letter, a name or shorthand.
void Search::offerExact(const std::string& typed)
{
    const auto found = m_bySqueezed.find(typed);
    if (found == m_bySqueezed.end() || typed.empty()) {
        return;
    }
    for (const std::uint32_t number : found->second) {
        const Phrase& phrase = m_phrases[number];
        const double bonus = phrase.isShorthand ? shorthandBonus : (phrase.isName ? nameBonus : synonymBonus);
        offer(phrase.procedure, 1.0 + bonus - laterMeaning * phrase.place, phrase.text);
    }
}

void Search::scorePhrases(const std::vector<Asked>& asked, bool approachAsked)
{
    double total = 0;
    for (const Asked& one : asked) {
        total += one.weight;
    }
    for (const std::uint32_t number : m_touchedPhrases) {
        const Phrase& phrase = m_phrases[number];
        double covered = 0;
        double matched = 0;
        bool all = true;
        for (std::size_t i = 0; i < asked.size(); ++i) {
            const double fits = m_fitOfPhrase[i][number];
            covered += fits * asked[i].weight;
            matched += fits > 0 ? asked[i].weight * std::min(1.0, fits + 0.1) : 0;
            all = all && (fits > 0 || asked[i].word.kind == Word::Kind::Side);
        }
        // An approach that nobody asked for is half a surprise only.
        const double weight = approachAsked ? phrase.weight : phrase.weight - 0.5 * phrase.approachWeight;
        const double coverage = covered / total;
        const double ofName = std::min(1.0, matched / std::max(weight, 0.1));
        double score = coverageShare * coverage + (1.0 - coverageShare) * ofName;
        for (const std::uint32_t word : phrase.unusual) {
            const bool wanted = std::any_of(asked.begin(), asked.end(), [&](const Asked& one) {
                return std::any_of(one.spellings.begin(), one.spellings.end(),
                                   [&](const auto& spelling) { return spelling.first == word; });
            });
            score -= wanted ? 0 : unaskedUnusual;
        }
        if (!all) {
            score *= 0.80;
        } else if (phrase.isName) {
            score += 0.01;
        }
        offer(phrase.procedure, score, phrase.text);
    }
}

/// "lumpectomy w/ SLNB": one word in the name, the other in a shorthand.
void Search::scoreAcrossPhrases(const std::vector<Asked>& asked)
{
    double total = 0;
    for (const Asked& one : asked) {
        total += one.weight;
    }
    for (const std::uint32_t procedure : m_touchedProcedures) {
        double covered = 0;
        bool all = true;
        for (std::size_t i = 0; i < asked.size(); ++i) {
            const double fits = m_fitOfProcedure[i][procedure];
            covered += fits * asked[i].weight;
            all = all && (fits > 0 || asked[i].word.kind == Word::Kind::Side);
        }
        if (all && asked.size() > 1) {
            offer(procedure, acrossFactor * (coverageShare * covered / total + (1.0 - coverageShare) * 0.6),
                  m_scoreText[procedure]);
        }
    }
}

void Search::offer(std::uint32_t procedure, double score, std::uint32_t text)
{
    if (m_procedureTouched[procedure] == 0) {
        m_procedureTouched[procedure] = 1;
        m_touchedProcedures.push_back(procedure);
    }
    score += m_prior[procedure];
    if (score > m_score[procedure]) {
        m_score[procedure] = score;
        m_scoreText[procedure] = text;
    }
}

/// Gives the hits and clears the scratch memory.
std::vector<Hit> Search::best(std::size_t most)
{
    std::vector<Hit> hits;
    std::erase_if(m_touchedProcedures, [&](std::uint32_t procedure) {
        m_procedureTouched[procedure] = 0;
        for (std::vector<float>& fits : m_fitOfProcedure) {
            fits[procedure] = 0;
        }
        const bool poor = m_score[procedure] < leastScore;
        m_score[procedure] = poor ? 0 : m_score[procedure];
        return poor;
    });
    const std::size_t count = std::min(most, m_touchedProcedures.size());
    std::partial_sort(m_touchedProcedures.begin(), m_touchedProcedures.begin() + static_cast<std::ptrdiff_t>(count),
                      m_touchedProcedures.end(), [&](std::uint32_t a, std::uint32_t b) {
                          return m_score[a] != m_score[b] ? m_score[a] > m_score[b] : a < b;
                      });
    for (std::size_t i = 0; i < count; ++i) {
        const std::uint32_t procedure = m_touchedProcedures[i];
        hits.push_back({&m_catalogue.procedures()[procedure], m_texts[m_scoreText[procedure]], m_score[procedure]});
    }
    for (const std::uint32_t procedure : m_touchedProcedures) {
        m_score[procedure] = 0;
    }
    m_touchedProcedures.clear();
    for (const std::uint32_t number : m_touchedPhrases) {
        m_phraseTouched[number] = 0;
        for (std::vector<float>& fits : m_fitOfPhrase) {
            fits[number] = 0;
        }
    }
    m_touchedPhrases.clear();
    return hits;
}

} // namespace peelpack::catalogue
