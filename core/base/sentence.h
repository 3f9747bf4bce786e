#pragma once

#include <ostream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace peelpack::base {

/// A text that stands in the source: only such texts can be collected for translators.
struct SourceText {
    consteval SourceText(const char* literal) : text(literal) {}
    const char* text;
};

/// A sentence for a person as a value: what it says in English, and from which text of the source and which arguments
/// it is made, so that the app can say it in its own language. Empty: nothing is said.
class Sentence {
public:
    Sentence() = default;
    /// A sentence that no screen shows, or that is another's (of the database, say): English wherever it is read.
    static Sentence plain(std::string english);
    /// The same unawares. Parts whose sentences come before the app's users are compiled with this as an error.
    [[deprecated("a screen may show it: use said(), or Sentence::plain() where none does")]] Sentence(
        std::string english);
    [[deprecated("a screen may show it: use said(), or Sentence::plain() where none does")]] Sentence(
        const char* english);

    /// The same with `argument` (a number, a name, a part that is said itself) for the next of %1, %2, ...
    [[nodiscard]] Sentence with(std::string argument) &&;
    [[nodiscard]] Sentence with(Sentence argument) &&;
    [[nodiscard]] Sentence with(const char* argument) &&;
    [[nodiscard]] Sentence with(std::size_t number) &&;

    [[nodiscard]] bool empty() const { return m_text.empty(); }
    [[nodiscard]] std::string english() const;
    operator std::string() const { return english(); }

    /// Under which heading translators find the text; null: it has no other language.
    [[nodiscard]] const char* heading() const { return m_heading; }
    /// As in the source, before the arguments are filled in.
    [[nodiscard]] const std::string& text() const { return m_text; }
    [[nodiscard]] const std::vector<Sentence>& arguments() const { return m_arguments; }

    bool operator==(const Sentence& other) const;
    bool operator==(std::string_view text) const { return english() == text; }
    bool operator==(const char* text) const { return english() == text; }

private:
    friend Sentence said(SourceText heading, SourceText text);

    const char* m_heading = nullptr;
    std::string m_text;
    std::vector<Sentence> m_arguments;
};

/// A sentence that can be said in every language of the app (US English, ends with a period). `heading`: one word for
/// translators. Both are literals at the call, so that qml/i18n/update.sh finds them.
Sentence said(SourceText heading, SourceText text);

std::string operator+(const std::string& before, const Sentence& sentence);
std::string operator+(const Sentence& sentence, const std::string& after);
std::ostream& operator<<(std::ostream& out, const Sentence& sentence);

} // namespace peelpack::base
