import QtQuick
import Flowkin

// A line or paragraph of text.
Text {
    color: Theme.ink
    font.pixelSize: Theme.body
    wrapMode: Text.WordWrap
    textFormat: Text.PlainText
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
