#include "qml/parts/look.h"

#include <algorithm>

namespace peelpack::parts {

LookColors lightColors()
{
    LookColors colors;
    colors.paper = QColor(0xF6, 0xF3, 0xEC);
    colors.card = QColor(0xFF, 0xFE, 0xFB);
    colors.ink = QColor(0x16, 0x26, 0x2C);
    colors.quietInk = QColor(0x52, 0x62, 0x68);
    colors.hairline = QColor(0xDD, 0xD8, 0xCC);
    colors.edge = QColor(0x83, 0x8C, 0x8C);
    colors.drape = QColor(0x0B, 0x5F, 0x63);
    colors.onDrape = QColor(0xFF, 0xFE, 0xFB);
    colors.wash = QColor(0xD7, 0xE8, 0xE6);
    colors.onWash = QColor(0x0A, 0x55, 0x59);
    colors.unprocessed = QColor(0xC2, 0x71, 0x50);
    colors.amber = QColor(0xA8, 0x69, 0x26);
    colors.olive = QColor(0x2E, 0x3A, 0x2F);
    colors.caution = QColor(0x98, 0x2F, 0x1C);
    colors.cautionWash = QColor(0xF8, 0xE3, 0xDB);
    colors.pouch = QColor(0xF3, 0xEF, 0xE6);
    colors.notApplicable = QColor(0x8F, 0x4A, 0x2E);
    colors.onNotApplicable = QColor(0xFF, 0xFE, 0xFB);
    return colors;
}

LookColors darkColors()
{
    LookColors colors;
    colors.paper = QColor(0x0E, 0x1B, 0x1F);
    colors.card = QColor(0x16, 0x27, 0x2C);
    colors.ink = QColor(0xE8, 0xEF, 0xEC);
    colors.quietInk = QColor(0x9D, 0xB0, 0xB2);
    colors.hairline = QColor(0x28, 0x39, 0x3E);
    colors.edge = QColor(0x6B, 0x80, 0x84);
    colors.drape = QColor(0x4F, 0xB7, 0xB0);
    colors.onDrape = QColor(0x08, 0x1B, 0x1D);
    colors.wash = QColor(0x17, 0x38, 0x3B);
    colors.onWash = QColor(0x8C, 0xD6, 0xD0);
    colors.unprocessed = QColor(0xB8, 0x7D, 0x67);
    colors.amber = QColor(0xD9, 0x9A, 0x4E);
    colors.olive = QColor(0xC9, 0xD6, 0xC4);
    colors.caution = QColor(0xF2, 0x95, 0x7E);
    colors.cautionWash = QColor(0x3A, 0x20, 0x1A);
    colors.pouch = QColor(0x1C, 0x30, 0x35);
    colors.notApplicable = QColor(0xC0, 0x86, 0x70);
    colors.onNotApplicable = QColor(0x1B, 0x12, 0x0E);
    return colors;
}

template <class Value>
void Look::put(Value& member, Value value)
{
    if (member != value) {
        member = value;
        Q_EMIT changed();
    }
}

void Look::setPrefersDark(bool dark)
{
    put(m_prefersDark, dark);
}

void Look::setHandedOver(bool handedOver)
{
    put(m_handedOver, handedOver);
}

void Look::setTextScale(qreal scale)
{
    put(m_textScale, std::clamp(scale, 1.0, 2.0));
}

void Look::setCalm(bool calm)
{
    put(m_calm, calm);
}

void Look::setLeftHand(bool left)
{
    put(m_leftHand, left);
}

} // namespace peelpack::parts
