#include "platform/app/window.h"

#include "platform/fonts/inter.h"

#include <QGuiApplication>
#include <QLocale>
#include <QQuickStyle>
#include <QtQml/qqmlextensionplugin.h>

Q_IMPORT_QML_PLUGIN(Peelpack_PartsPlugin)
Q_IMPORT_QML_PLUGIN(Peelpack_StudentPlugin)
Q_IMPORT_QML_PLUGIN(Peelpack_PreceptorPlugin)
Q_IMPORT_QML_PLUGIN(Peelpack_InstructorPlugin)
Q_IMPORT_QML_PLUGIN(Peelpack_EvidencePlugin)
Q_IMPORT_QML_PLUGIN(Peelpack_ShellPlugin)

namespace peelpack::app {

void dressApplication()
{
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    fonts::useInter();
}

Window::Window(shell::Phone& phone, QObject* parent)
    : QObject(parent), m_phone(phone), m_engine(std::make_unique<QQmlApplicationEngine>())
{
    speak();
    connect(phone.settings(), &shell::Settings::languageChanged, this, [this] {
        speak();
        m_engine->retranslate();
    });
    m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine->setInitialProperties({{QStringLiteral("phone"), QVariant::fromValue(&m_phone)}});
    m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Peelpack/Shell/AppWindow.qml")));
    m_phone.settings()->dress(look()); // only now the type is known
}

Window::~Window()
{
    m_phone.settings()->dress(nullptr);
}

QQuickWindow* Window::window() const
{
    return m_engine->rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(m_engine->rootObjects().front());
}

parts::Look* Window::look()
{
    return m_engine->singletonInstance<parts::Look*>(qmlTypeId("Peelpack.Parts", 1, 0, "Look"));
}

void Window::speak()
{
    QCoreApplication::removeTranslator(&m_words);
    const bool spanish = m_phone.settings()->language() == QLatin1String("es");
    QLocale::setDefault(spanish ? QLocale(QLocale::Spanish, QLocale::UnitedStates)
                                : QLocale(QLocale::English, QLocale::UnitedStates));
    if (m_words.load(spanish ? QStringLiteral(":/peelpack/i18n/peelpack_es.qm")
                             : QStringLiteral(":/peelpack/i18n/peelpack_en.qm"))) {
        QCoreApplication::installTranslator(&m_words);
    }
    m_phone.speakAnew();
}

} // namespace peelpack::app
