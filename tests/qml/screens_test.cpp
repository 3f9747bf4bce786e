#include "platform/app/screens.h"
#include "platform/app/window.h"
#include "platform/files/resources.h"

#include <QAccessible>
#include <QGuiApplication>
#include <QQuickItem>

#include <cstdio>
#include <set>

// Every screen in every dress: nothing clipped, nothing over the edge, no control over another, each at least 48 high
// and wide with a role and a name, and all of them within reach of the Tab key.

using namespace peelpack;

namespace {

constexpr qreal least = 48;
constexpr qreal slack = 1.01;

int g_warnings = 0;
int g_controls = 0;
int g_words = 0;

void countWarnings(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    const bool harmless =
        message.contains(QLatin1String("propagateSizeHints")) || message.contains(QLatin1String("XDG_RUNTIME_DIR"));
    if (type != QtDebugMsg && type != QtInfoMsg && !harmless) {
        std::fprintf(stderr, "warning: %s\n", qPrintable(message));
        ++g_warnings;
    }
}

bool isControl(const QQuickItem& item)
{
    return item.inherits("QQuickAbstractButton") || item.inherits("QQuickComboBox") ||
           item.inherits("QQuickTextField") || item.inherits("peelpack::parts::SignaturePad");
}

/// What of the item can be seen, in the window.
QRectF seen(const QQuickItem& item)
{
    QRectF rect = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
    for (const QQuickItem* parent = item.parentItem(); parent != nullptr; parent = parent->parentItem()) {
        if (parent->clip()) {
            rect = rect.intersected(parent->mapRectToScene(QRectF(0, 0, parent->width(), parent->height())));
        }
    }
    return rect;
}

class Inspection {
public:
    Inspection(const app::ScreenDress& dress, const QString& screen, QQuickWindow& window)
        : m_where(dress.name() + QLatin1Char('/') + screen), m_window(window)
    {
    }

    int run()
    {
        walk(*m_window.contentItem());
        overlaps();
        tabs();
        return m_faults;
    }

private:
    void fault(const QQuickItem& item, const QString& what)
    {
        const QVariant text = item.property("text");
        std::fprintf(stderr, "%s: %s \"%s\" %s\n", qPrintable(m_where), item.metaObject()->className(),
                     qPrintable(text.toString().left(60)), qPrintable(what));
        ++m_faults;
    }

    void walk(QQuickItem& item)
    {
        if (!item.isVisible() || item.opacity() == 0) {
            return;
        }
        if (isControl(item)) {
            control(item);
        }
        if (item.inherits("QQuickText")) {
            words(item);
        }
        for (QQuickItem* child : item.childItems()) {
            walk(*child);
        }
    }

    void control(QQuickItem& item)
    {
        ++g_controls;
        if (item.width() + 0.01 < least || item.height() + 0.01 < least) {
            fault(item, QStringLiteral("is %1 x %2").arg(item.width()).arg(item.height()));
        }
        QAccessibleInterface* said = QAccessible::queryAccessibleInterface(&item);
        if (said == nullptr || said->role() == QAccessible::NoRole || said->role() == QAccessible::Client) {
            fault(item, QStringLiteral("has no role"));
        } else if (said->text(QAccessible::Name).trimmed().isEmpty()) {
            fault(item, QStringLiteral("has no name"));
        }
        const QRectF rect = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
        if (rect.left() < -slack || rect.right() > m_window.width() + slack) {
            fault(item, QStringLiteral("reaches over the edge: %1 to %2").arg(rect.left()).arg(rect.right()));
        }
        if (item.isEnabled()) {
            m_controls.push_back(&item);
        }
    }

    void words(const QQuickItem& text)
    {
        const qreal wide = text.property("contentWidth").toReal();
        const QString said = text.property("text").toString();
        if (said.isEmpty()) {
            return;
        }
        if (said.contains(QLatin1String("(s)"))) {
            fault(text, QStringLiteral("was not said in the words of its language"));
        }
        ++g_words;
        const QRectF rect = text.mapRectToScene(QRectF(0, 0, text.width(), text.height()));
        if (rect.left() < -slack || rect.left() + wide > m_window.width() + slack) {
            fault(text, QStringLiteral("reaches over the edge"));
        }
        if (text.property("truncated").toBool()) {
            fault(text, QStringLiteral("is cut short"));
        }
        if (wide > text.width() + slack && text.width() > 0) {
            fault(text, QStringLiteral("is wider than its place: %1 in %2").arg(wide).arg(text.width()));
        }
        if (text.property("contentHeight").toReal() > text.height() + slack) {
            fault(text, QStringLiteral("is higher than its place"));
        }
    }

    /// A list that is open lies over the page, and is meant to.
    static bool liesOver(const QQuickItem& item)
    {
        for (const QQuickItem* parent = &item; parent != nullptr; parent = parent->parentItem()) {
            if (parent->inherits("QQuickOverlay")) {
                return true;
            }
        }
        return false;
    }

    void overlaps()
    {
        for (std::size_t i = 0; i < m_controls.size(); ++i) {
            for (std::size_t j = i + 1; j < m_controls.size(); ++j) {
                const QQuickItem& one = *m_controls[i];
                const QQuickItem& other = *m_controls[j];
                if (one.isAncestorOf(&other) || other.isAncestorOf(&one) || liesOver(one) != liesOver(other)) {
                    continue;
                }
                const QRectF both = seen(one).intersected(seen(other));
                if (both.width() > 2 && both.height() > 2) {
                    fault(one, QStringLiteral("lies over \"%1\"").arg(other.property("text").toString()));
                }
            }
        }
    }

    /// Tab goes around and comes to every enabled control.
    void tabs()
    {
        std::set<const QQuickItem*> reached;
        QQuickItem* at = m_window.contentItem();
        for (std::size_t i = 0; i < 4 * m_controls.size() + 20; ++i) {
            at = at->nextItemInFocusChain(true);
            if (at == nullptr || !reached.insert(at).second) {
                break;
            }
        }
        for (const QQuickItem* item : m_controls) {
            if (item->activeFocusOnTab() && !reached.contains(item)) {
                fault(*item, QStringLiteral("is not reached by Tab"));
            }
        }
    }

    QString m_where;
    QQuickWindow& m_window;
    std::vector<const QQuickItem*> m_controls;
    int m_faults = 0;
};

} // namespace

int main(int argc, char* argv[])
{
    QGuiApplication application(argc, argv);
    qInstallMessageHandler(countWarnings);
    QAccessible::setActive(true);
    app::dressApplication();
    student::Shelf shelf(files::shippedCatalogue);
    std::vector<app::ScreenDress> dresses = app::allDresses();
    if (argc > 1) {
        std::erase_if(dresses, [&](const app::ScreenDress& dress) {
            return !dress.name().contains(QString::fromLocal8Bit(argv[1]));
        });
    }
    // Layout does not know light from dark: where both are not asked for, normal text is light and large text dark.
    if (argc > 2 && QByteArray(argv[2]) == "paired") {
        std::erase_if(dresses, [](const app::ScreenDress& dress) { return dress.dark != (dress.textPercent > 100); });
    }
    int faults = 0;
    const base::Result<int> walked = app::walkScreens(
        dresses, shelf, [&](const app::ScreenDress& dress, const QString& screen, QQuickWindow& window) {
            faults += Inspection(dress, screen, window).run();
            return true;
        });
    if (!walked) {
        std::fprintf(stderr, "%s\n", walked.error().sentence.c_str());
        return 1;
    }
    std::printf("%d screens with %d controls and %d texts: %d faults, %d warnings\n", walked.value(), g_controls,
                g_words, faults, g_warnings);
    const bool saw = g_controls > 3 * walked.value() && g_words > 5 * walked.value();
    return saw && faults == 0 && g_warnings == 0 ? 0 : 1;
}
