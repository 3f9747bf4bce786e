#pragma once

#include <QColor>
#include <QObject>
#include <QQmlEngine>

namespace peelpack::parts {

/// Every color that a screen may use, by what it is for. Pairs that stand on each other keep WCAG 2.2 AA: 4.5 to 1 for
/// text, 3 to 1 for strokes and the edges of controls (success criteria 1.4.3 and 1.4.11).
struct LookColors {
    Q_GADGET
    QML_VALUE_TYPE(lookColors)
    Q_PROPERTY(QColor paper MEMBER paper)
    Q_PROPERTY(QColor card MEMBER card)
    Q_PROPERTY(QColor ink MEMBER ink)
    Q_PROPERTY(QColor quietInk MEMBER quietInk)
    Q_PROPERTY(QColor hairline MEMBER hairline)
    Q_PROPERTY(QColor edge MEMBER edge)
    Q_PROPERTY(QColor drape MEMBER drape)
    Q_PROPERTY(QColor onDrape MEMBER onDrape)
    Q_PROPERTY(QColor wash MEMBER wash)
    Q_PROPERTY(QColor onWash MEMBER onWash)
    Q_PROPERTY(QColor unprocessed MEMBER unprocessed)
    Q_PROPERTY(QColor amber MEMBER amber)
    Q_PROPERTY(QColor olive MEMBER olive)
    Q_PROPERTY(QColor caution MEMBER caution)
    Q_PROPERTY(QColor cautionWash MEMBER cautionWash)
    Q_PROPERTY(QColor pouch MEMBER pouch)
    Q_PROPERTY(QColor notApplicable MEMBER notApplicable)
    Q_PROPERTY(QColor onNotApplicable MEMBER onNotApplicable)

public:
    QColor paper;           ///< behind everything
    QColor card;            ///< what lies on the paper
    QColor ink;             ///< text
    QColor quietInk;        ///< text of the second rank
    QColor hairline;        ///< lines that only order; never the only sign of a control
    QColor edge;            ///< edges of fields and choices
    QColor drape;           ///< only for what can be done or what counts
    QColor onDrape;         ///< text on drape
    QColor wash;            ///< behind what counts
    QColor onWash;          ///< text on wash
    QColor unprocessed;     ///< seal: not signed
    QColor amber;           ///< seal: signed
    QColor olive;           ///< seal: initialed
    QColor caution;         ///< text that warns
    QColor cautionWash;     ///< behind it
    QColor pouch;           ///< the end of the pouch on a card, under the seal
    QColor notApplicable;   ///< behind a chosen N/A
    QColor onNotApplicable; ///< text on it
};

LookColors lightColors();
LookColors darkColors();

/// The tokens of the look, and the person's own settings for it: Qt 6.4 has none for text size and motion. One for
/// the whole process; knows nothing of the work.
class Look : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(peelpack::parts::LookColors colors READ colors NOTIFY changed)
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    Q_PROPERTY(bool prefersDark READ prefersDark WRITE setPrefersDark NOTIFY changed)
    Q_PROPERTY(bool handedOver READ handedOver WRITE setHandedOver NOTIFY changed)
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY changed)
    Q_PROPERTY(bool calm READ calm WRITE setCalm NOTIFY changed)
    Q_PROPERTY(bool leftHand READ leftHand WRITE setLeftHand NOTIFY changed)
    Q_PROPERTY(qreal titleSize READ titleSize NOTIFY changed)
    Q_PROPERTY(qreal cardTitleSize READ cardTitleSize NOTIFY changed)
    Q_PROPERTY(qreal bodySize READ bodySize NOTIFY changed)
    Q_PROPERTY(qreal secondarySize READ secondarySize NOTIFY changed)
    Q_PROPERTY(qreal smallSize READ smallSize NOTIFY changed)
    Q_PROPERTY(qreal touch READ touch CONSTANT)
    Q_PROPERTY(qreal mainTouch READ mainTouch CONSTANT)
    Q_PROPERTY(qreal gap READ gap CONSTANT)
    Q_PROPERTY(qreal margin READ margin CONSTANT)
    Q_PROPERTY(qreal radius READ radius CONSTANT)
    Q_PROPERTY(int sealing READ sealing NOTIFY changed)

public:
    explicit Look(QObject* parent = nullptr) : QObject(parent) {}

    [[nodiscard]] LookColors colors() const { return dark() ? darkColors() : lightColors(); }
    /// What is shown: the hand-over is dark in both themes.
    [[nodiscard]] bool dark() const { return m_prefersDark || m_handedOver; }
    [[nodiscard]] bool prefersDark() const { return m_prefersDark; }
    void setPrefersDark(bool dark);
    [[nodiscard]] bool handedOver() const { return m_handedOver; }
    void setHandedOver(bool handedOver);
    /// 1 to 2; other values are brought there.
    [[nodiscard]] qreal textScale() const { return m_textScale; }
    void setTextScale(qreal scale);
    /// Without motion.
    [[nodiscard]] bool calm() const { return m_calm; }
    void setCalm(bool calm);
    [[nodiscard]] bool leftHand() const { return m_leftHand; }
    void setLeftHand(bool left);

    // Heights of type in logical pixels; none below 12 at scale 1.
    [[nodiscard]] qreal titleSize() const { return 26 * m_textScale; }
    [[nodiscard]] qreal cardTitleSize() const { return 16.5 * m_textScale; }
    [[nodiscard]] qreal bodySize() const { return 15.5 * m_textScale; }
    [[nodiscard]] qreal secondarySize() const { return 13.5 * m_textScale; }
    [[nodiscard]] qreal smallSize() const { return 12 * m_textScale; }

    [[nodiscard]] qreal touch() const { return 48; }     ///< least side of what is touched
    [[nodiscard]] qreal mainTouch() const { return 56; } ///< height of the one main action
    [[nodiscard]] qreal gap() const { return 12; }
    [[nodiscard]] qreal margin() const { return 16; }
    [[nodiscard]] qreal radius() const { return 12; }
    /// Milliseconds of the sealing, the one motion there is.
    [[nodiscard]] int sealing() const { return m_calm ? 0 : 250; }

Q_SIGNALS:
    void changed();

private:
    template <class Value>
    void put(Value& member, Value value);

    bool m_prefersDark = false;
    bool m_handedOver = false;
    bool m_calm = false;
    bool m_leftHand = false;
    qreal m_textScale = 1;
};

} // namespace peelpack::parts
