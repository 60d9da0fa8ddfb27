#include "app/gui/voice.h"

#include <QLocale>
#ifdef FLOWKIN_HAS_SPEECH
#include <QTextToSpeech>
#else
class QTextToSpeech {};
#endif

namespace flowkin {

Voice::Voice(Preferences* preferences, QObject* parent)
    : QObject(parent), preferences_(preferences) {}

Voice::~Voice() = default;

void Voice::Say(const QString& sentence) {
#ifdef FLOWKIN_HAS_SPEECH
  if (!preferences_->speaks() || sentence.isEmpty()) return;
  if (!tried_) {
    tried_ = true;
    if (!QTextToSpeech::availableEngines().isEmpty()) {
      speech_ = std::make_unique<QTextToSpeech>();
    }
  }
  if (!speech_ || speech_->state() == QTextToSpeech::Error) return;
  speech_->setLocale(QLocale());
  speech_->say(sentence);
#else
  Q_UNUSED(sentence);
#endif
}

}  // namespace flowkin
