#include "platform/camera/qr_picture.h"
#include "platform/camera/qr_reader.h"
#include "sync/carry/frame_source.h"

#include <QPainter>
#include <QTransform>

#include <algorithm>
#include <random>

#include "tests/support/catch.h"

// Codes of a parcel as a camera sees them: small, turned, blurred, gray and grainy, beside other things.
using namespace peelpack;

namespace {

struct Photograph {
    double modulePixels = 4;
    double degrees = 0;
    int grain = 0; ///< lightness of each pixel is off by so much at most, of 255
};

QImage photograph(const keys::Bytes& code, const Photograph& how)
{
    constexpr int sharp = 8; // pixels of a module before the camera
    const QImage shown = camera::qrPicture(code, sharp);
    QTransform turn;
    turn.rotate(how.degrees);
    turn.scale(how.modulePixels / sharp, how.modulePixels / sharp);
    const QImage small = shown.convertToFormat(QImage::Format_ARGB32).transformed(turn, Qt::SmoothTransformation);
    QImage seen(small.width() + 160, small.height() + 120, QImage::Format_RGB32);
    seen.fill(QColor(90, 84, 70));
    QPainter painter(&seen);
    painter.setOpacity(0.8); // a dim screen
    painter.drawImage(70, 50, small);
    painter.end();
    std::mt19937 random(11);
    std::uniform_int_distribution<int> off(-how.grain, how.grain);
    for (int y = 0; y < seen.height(); ++y) {
        for (int x = 0; x < seen.width(); ++x) {
            const int gray = std::clamp(qGray(seen.pixel(x, y)) + off(random), 0, 255);
            seen.setPixel(x, y, qRgb(gray, gray, gray));
        }
    }
    return seen;
}

keys::Bytes codeOf(std::uint16_t number)
{
    keys::Bytes parcel(12'000);
    std::mt19937 random(5);
    for (std::uint8_t& byte : parcel) {
        byte = static_cast<std::uint8_t>(random());
    }
    return carry::FrameSource::of(parcel).value().frame(number);
}

bool reads(const keys::Bytes& code, const Photograph& how)
{
    const auto read = camera::readQr(photograph(code, how));
    return read && std::equal(read->begin(), read->end(), code.begin(), code.end(),
                              [](char a, std::uint8_t b) { return static_cast<std::uint8_t>(a) == b; });
}

} // namespace

TEST_CASE("A code of a parcel is read from three pixels a module on, however it is turned", "[codes]")
{
    constexpr std::uint16_t codes = 10;
    for (const double pixels : {3.0, 3.5, 4.7, 8.0}) {
        for (const double degrees : {0.0, 4.0, 15.0, 45.0, 90.0, 183.0}) {
            for (std::uint16_t number = 36; number < 36 + codes; ++number) { // plain ones and spare ones
                INFO(pixels << " pixels, " << degrees << " degrees, code " << number);
                CHECK(reads(codeOf(number), {pixels, degrees, 12}));
            }
        }
    }
}

TEST_CASE("Below that some codes are missed, which spare ones make up for, and none is read as another", "[codes]")
{
    int read = 0;
    int tried = 0;
    for (const double degrees : {0.0, 4.0, 15.0, 45.0, 90.0, 183.0}) {
        for (std::uint16_t number = 0; number < 10; ++number) {
            const auto seen = camera::readQr(photograph(codeOf(number), {2.2, degrees, 12}));
            ++tried;
            read += seen ? 1 : 0;
            CHECK((!seen || reads(codeOf(number), {2.2, degrees, 12})));
        }
    }
    CHECK(10 * read >= 8 * tried);
    CHECK_FALSE(reads(codeOf(0), {0.7, 0, 12}));
}

TEST_CASE("A picture without a code, or none at all, gives nothing", "[codes]")
{
    CHECK_FALSE(camera::readQr({}));
    QImage blank(300, 300, QImage::Format_RGB32);
    blank.fill(Qt::white);
    CHECK_FALSE(camera::readQr(blank));
    CHECK(camera::qrPicture(keys::Bytes(2332), 4).isNull());
    CHECK_FALSE(camera::qrPicture(keys::Bytes(2331), 1).isNull());
}

TEST_CASE("The code of a frame is of version 13: 69 modules and its quiet zone", "[codes]")
{
    constexpr int side = 17 + 4 * 13 + 2 * 4; // ISO/IEC 18004
    CHECK(codeOf(0).size() <= 331);
    CHECK(camera::qrPicture(codeOf(0), 1).width() == side);
    CHECK(camera::qrPicture(keys::Bytes(331, 7), 1).width() == side);
    CHECK(camera::qrPicture(keys::Bytes(332, 7), 1).width() > side);
}
