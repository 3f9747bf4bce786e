#pragma once

#include "core/catalogue/catalogue.h"
#include "core/catalogue/words.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace peelpack::catalogue {

/// One procedure that fits what was typed.
struct Hit {
    const Procedure* procedure = nullptr;
    std::string matched; ///< the name, synonym or shorthand that fits best
    double score = 0;    ///< higher is better; only for comparing hits of one query
};

/// Finds procedures by what people type in an operating room: shorthand, clipped speech, words in any order, partly
/// typed words on every keystroke, slips of typing, British spelling. An index over one catalogue, which must outlive
/// it. Searching changes only scratch memory: one thread at a time.
class Search {
public:
    explicit Search(const Catalogue& catalogue);

    /// The best hits first, at most `most`. Empty when nothing fits, and for a text without a word.
    std::vector<Hit> find(std::string_view text, std::size_t most);

private:
    struct Phrase {
        std::uint32_t procedure;
        std::uint32_t text; ///< into m_texts
        bool isShorthand;
        bool isName;
        double weight;         ///< of its content words
        double approachWeight; ///< of the words that say how it is approached
        std::uint32_t place;   ///< of a shorthand in its procedure's list; 0 for the first and for names
        std::vector<std::uint32_t> words;
        std::vector<std::uint32_t> unusual; ///< those of the words that nobody leaves out who means them
    };
    struct Spelling {
        std::string text;
        double weight = 0; ///< rare words weigh more
        std::vector<std::uint32_t> phrases;
    };
    struct Asked {
        Word word;
        bool last = false;
        double weight = 0;
        std::vector<std::pair<std::uint32_t, double>> spellings; ///< and how well each fits, up to 1
    };

    void addPhrase(std::uint32_t procedure, const std::string& text, bool isShorthand, bool isName);
    std::uint32_t spellingOf(const std::string& text);
    std::vector<Asked> ask(const std::vector<Word>& words) const;
    void fit(Asked& asked) const;
    void fitSlips(Asked& asked) const;
    void offerExact(const std::string& typed);
    void scorePhrases(const std::vector<Asked>& asked, bool approachAsked);
    void scoreAcrossPhrases(const std::vector<Asked>& asked);
    void offer(std::uint32_t procedure, double score, std::uint32_t text);
    [[nodiscard]] std::vector<Hit> best(std::size_t most);

    const Catalogue& m_catalogue;
    std::vector<std::string> m_texts;
    std::vector<Phrase> m_phrases;
    std::vector<Spelling> m_spellings;
    std::unordered_map<std::string, std::uint32_t> m_spellingByText;
    std::vector<std::uint32_t> m_alphabetical;                                ///< spellings in the order of their text
    std::unordered_map<std::string, std::vector<std::uint32_t>> m_bySqueezed; ///< phrases
    std::vector<double> m_prior; ///< by procedure: many names mean much talked of

    // Scratch, by phrase or procedure; only what m_touched names is in use.
    std::vector<std::vector<float>> m_fitOfPhrase; ///< [asked word][phrase]
    std::vector<std::vector<float>> m_fitOfProcedure;
    std::vector<std::uint32_t> m_touchedPhrases;
    std::vector<std::uint8_t> m_phraseTouched;
    std::vector<std::uint32_t> m_touchedProcedures;
    std::vector<std::uint8_t> m_procedureTouched;
    std::vector<double> m_score; ///< by procedure
    std::vector<std::uint32_t> m_scoreText;
};

} // namespace peelpack::catalogue
