#include "qml/parts/look.h"

#include "tests/support/catch.h"

#include <cmath>

using namespace peelpack;

namespace {

/// Relative luminance and contrast as WCAG 2.2 defines them (definitions "relative luminance" and "contrast ratio",
/// https://www.w3.org/TR/WCAG22/).
double luminance(const QColor& color)
{
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(color.redF()) + 0.7152 * linear(color.greenF()) + 0.0722 * linear(color.blueF());
}

double contrast(const QColor& one, const QColor& other)
{
    const double a = luminance(one) + 0.05;
    const double b = luminance(other) + 0.05;
    return a > b ? a / b : b / a;
}

struct Pair {
    const char* name;
    QColor front;
    QColor back;
};

std::vector<Pair> textPairs(const parts::LookColors& c)
{
    return {{"ink on paper", c.ink, c.paper},
            {"ink on card", c.ink, c.card},
            {"quiet ink on paper", c.quietInk, c.paper},
            {"quiet ink on card", c.quietInk, c.card},
            {"drape on paper", c.drape, c.paper},
            {"drape on card", c.drape, c.card},
            {"text on drape", c.onDrape, c.drape},
            {"text on wash", c.onWash, c.wash},
            {"ink on wash", c.ink, c.wash},
            {"quiet ink on wash", c.quietInk, c.wash},
            {"drape on wash", c.drape, c.wash},
            {"caution on its wash", c.caution, c.cautionWash},
            {"caution on card", c.caution, c.card},
            {"caution on paper", c.caution, c.paper},
            {"text of No", c.paper, c.ink},
            {"text of N/A", c.onNotApplicable, c.notApplicable},
            {"text on caution", c.onDrape, c.caution}};
}

std::vector<Pair> strokePairs(const parts::LookColors& c)
{
    return {{"edge on paper", c.edge, c.paper},
            {"edge on card", c.edge, c.card},
            {"drape edge on paper", c.drape, c.paper},
            {"open seal on the pouch", c.unprocessed, c.pouch},
            {"signed seal on the pouch", c.amber, c.pouch},
            {"initialed seal on the pouch", c.olive, c.pouch},
            {"torn edge on the pouch", c.caution, c.pouch},
            {"tally strokes on paper", c.drape, c.paper},
            {"dots of what is needed on paper", c.edge, c.paper},
            {"N/A on card", c.notApplicable, c.card}};
}

} // namespace

TEST_CASE("WCAG's own figures: black on white is 21 to 1, a color on itself 1 to 1", "[look]")
{
    CHECK(contrast(Qt::black, Qt::white) == Approx(21.0).epsilon(0.0001));
    CHECK(contrast(QColor(90, 90, 90), QColor(90, 90, 90)) == Approx(1.0));
    // #777777 on white is the best known near miss of 4.5 to 1 (WCAG techniques G18, from memory): 4.48.
    CHECK(contrast(QColor(0x77, 0x77, 0x77), Qt::white) == Approx(4.48).epsilon(0.002));
}

TEST_CASE("Every pair of colors keeps WCAG 2.2 AA in both themes", "[look]")
{
    for (const bool dark : {false, true}) {
        const parts::LookColors colors = dark ? parts::darkColors() : parts::lightColors();
        for (const Pair& pair : textPairs(colors)) {
            INFO((dark ? "dark: " : "light: ") << pair.name << " " << contrast(pair.front, pair.back));
            CHECK(contrast(pair.front, pair.back) >= 4.5);
        }
        for (const Pair& pair : strokePairs(colors)) {
            INFO((dark ? "dark: " : "light: ") << pair.name << " " << contrast(pair.front, pair.back));
            CHECK(contrast(pair.front, pair.back) >= 3.0);
        }
    }
}

TEST_CASE("Type is never smaller than 12 and grows to twice", "[look]")
{
    parts::Look look;
    CHECK(look.smallSize() == 12);
    look.setTextScale(5);
    CHECK(look.textScale() == 2);
    CHECK(look.smallSize() == 24);
    look.setTextScale(0.1);
    CHECK(look.smallSize() == 12);
    CHECK(look.touch() >= 48);
}
