#pragma once

#include <QDateTime>
#include <QString>
#include <string>

#include "core/base/utc_time.h"

namespace flowkin {

inline QString Text(const std::string& text) {
  return QString::fromStdString(text);
}

inline UtcTime Now() { return UtcTime{QDateTime::currentMSecsSinceEpoch()}; }

}  // namespace flowkin
