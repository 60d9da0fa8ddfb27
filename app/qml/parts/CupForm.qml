import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import QtQuick.Templates as T
import Flowkin

// What is known of a cup, to be written down or changed.
Popup {
    id: sheet

    required property BenchBoard board
    property int row: -1
    property string swatch
    property var values: ({})
    property bool labelled: false
    property var several: []
    readonly property list<string> swatches: ["#f4f2ea", "#191919", "#7d8083", "#b8322a", "#e0742f", "#e5b93c", "#4f8f4a", "#1f7a7a", "#2c5fa8", "#2f2f78", "#7a3f8c", "#c76a94", "#7a5234", "#cdb58f"]

    function edit(cupRow: int) {
        row = cupRow
        labelled = false
        several = []
        fill(board.form(cupRow))
        open()
        nameField.forceActiveFocus()
    }
    function editLabel() {
        row = -1
        labelled = true
        several = []
        labelField.clear()
        fill(board.form(-1))
        open()
        labelField.forceActiveFocus()
    }
    function take(read: var) {
        if (read["trouble"]) {
            wrong.text = read["trouble"]
            labelField.selectAll()
            return
        }
        several = read["several"] || []
        if (several.length > 0) {
            wrong.text = ""
            allButton.forceActiveFocus()
            return
        }
        fill(read)
        nameField.forceActiveFocus()
    }
    function keepAll() {
        wrong.text = board.keepLabels(labelPhoto.selectedFile)
        if (wrong.text.length === 0)
            close()
    }
    function fill(form: var) {
        values = form
        nameField.text = values["name"]
        roleChoice.currentIndex = values["role"]
        brandField.text = values["brand"]
        colourField.text = values["colour"]
        swatch = values["swatch"]
        volumeField.text = values["volume"]
        targetField.text = values["target"]
        reserveField.text = values["reserve"]
        thinnerChoice.currentIndex = values["thinner"]
        wrong.text = ""
    }
    function keep() {
        wrong.text = board.keep(row, {
            "name": nameField.text,
            "role": roleChoice.currentIndex,
            "brand": brandField.text,
            "colour": colourField.text,
            "swatch": swatch,
            "volume": volumeField.text,
            "target": targetField.text,
            "reserve": reserveField.text,
            "thinner": thinnerChoice.currentIndex,
            "water": values["water"] || 0
        })
        if (wrong.text.length === 0)
            close()
    }

    FileDialog {
        id: labelPhoto
        objectName: "cupLabelDialog"
        title: qsTr("A photo of the label")
        nameFilters: [qsTr("Photos (%1)").arg("*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.ppm"), qsTr("All files (%1)").arg("*")]
        onAccepted: sheet.take(sheet.board.formOfLabelPhoto(selectedFile))
    }

    parent: T.Overlay.overlay
    anchors.centerIn: parent
    width: parent ? Math.min(parent.width - Theme.edge * 2, Theme.px(760)) : 0
    height: parent ? Math.min(parent.height - Theme.edge * 2, form.implicitHeight + Theme.edge * 2 + buttons.height + Theme.gap) : 0
    padding: Theme.edge
    modal: true
    focus: true
    closePolicy: Popup.CloseOnEscape
    background: Panel {}

    contentItem: Item {
        Scroller {
            id: form
            gutter: Theme.px(14)
            anchors { left: parent.left; right: parent.right; top: parent.top; bottom: buttons.top; bottomMargin: Theme.gap }
            GridLayout {
                Layout.fillWidth: true
                columns: width > Theme.px(460) ? 2 : 1
                columnSpacing: Theme.edge
                rowSpacing: Theme.px(6)

                Words { visible: sheet.labelled; text: qsTr("Code of the label") }
                Field { id: labelField; objectName: "cupLabel"; visible: sheet.labelled; label: qsTr("Code of the label"); placeholderText: qsTr("scan or paste it, then Enter"); Layout.fillWidth: true; onAccepted: sheet.take(sheet.board.formOfLabel(text)) }
                BigButton { objectName: "cupLabelPhoto"; visible: sheet.labelled; Layout.columnSpan: parent.columns; text: qsTr("A photo of the label …"); onClicked: labelPhoto.open() }
                Words { visible: text.length > 0; Layout.fillWidth: true; Layout.columnSpan: parent.columns; objectName: "cupTold"; text: sheet.values["told"] || ""; color: Theme.quiet }
                Words { text: qsTr("Name of the cup") }
                Field { id: nameField; objectName: "cupName"; label: qsTr("Name of the cup"); Layout.fillWidth: true; onAccepted: sheet.keep() }
                Words { text: qsTr("What it is") }
                Choice { id: roleChoice; objectName: "cupRole"; label: qsTr("What it is"); Layout.fillWidth: true; model: [qsTr("base coat"), qsTr("colour"), qsTr("activator")] }
                Words { text: qsTr("How much is in it (%1)").arg(sheet.board.volumeUnit) }
                Field { id: volumeField; objectName: "cupVolume"; label: qsTr("How much is in it"); Layout.fillWidth: true; inputMethodHints: Qt.ImhFormattedNumbersOnly; onAccepted: sheet.keep() }
                Words { text: qsTr("Brand") }
                Field { id: brandField; objectName: "cupBrand"; label: qsTr("Brand"); Layout.fillWidth: true; onAccepted: sheet.keep() }
                Words { text: qsTr("Colour") }
                Field { id: colourField; objectName: "cupColour"; label: qsTr("Colour"); Layout.fillWidth: true; onAccepted: sheet.keep() }
                Words { text: qsTr("Swatch") }
                Flow {
                    Layout.fillWidth: true
                    spacing: Theme.px(6)
                    Repeater {
                        model: sheet.swatches
                        AbstractButton {
                            id: spot
                            required property string modelData
                            required property int index
                            objectName: "swatch" + index
                            implicitWidth: Theme.px(44)
                            implicitHeight: Theme.px(44)
                            focusPolicy: Qt.StrongFocus
                            Accessible.name: qsTr("Swatch %1").arg(index + 1)
                            onClicked: sheet.swatch = modelData
                            background: Rectangle {
                                radius: Theme.px(8)
                                color: spot.modelData
                                border.width: Theme.px(spot.activeFocus || sheet.swatch === spot.modelData ? 4 : 1)
                                border.color: spot.activeFocus ? Theme.warm : sheet.swatch === spot.modelData ? Theme.ink : Theme.line
                            }
                        }
                    }
                }
                Words { text: qsTr("Kept back unthinned (%1)").arg(sheet.board.volumeUnit) }
                Field { id: reserveField; objectName: "cupReserve"; label: qsTr("Kept back unthinned"); Layout.fillWidth: true; inputMethodHints: Qt.ImhFormattedNumbersOnly; onAccepted: sheet.keep() }
                Words { text: qsTr("Wanted flow, 1 = base coat") }
                Field { id: targetField; objectName: "cupTarget"; label: qsTr("Wanted flow"); Layout.fillWidth: true; inputMethodHints: Qt.ImhFormattedNumbersOnly; onAccepted: sheet.keep() }
                Words { text: qsTr("Thinned with") }
                Choice { id: thinnerChoice; objectName: "cupThinner"; label: qsTr("Thinned with"); Layout.fillWidth: true; model: [qsTr("water"), qsTr("flow additive"), qsTr("pouring medium")] }
            }
        }
        Flow {
            id: buttons
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            spacing: Theme.gap
            Words { id: wrong; objectName: "cupWrong"; width: parent.width; visible: text.length > 0; color: Theme.warm; font.bold: true; Accessible.role: Accessible.AlertMessage }
            Words { objectName: "cupSeveral"; width: parent.width; visible: sheet.several.length > 0; text: qsTr("There are %n labels on this photo: %1.", "", sheet.several.length).arg(sheet.several.join(", ")) }
            BigButton { id: allButton; objectName: "cupAllLabels"; visible: sheet.several.length > 0; strong: true; text: qsTr("Put all of them on the bench"); onClicked: sheet.keepAll() }
            BigButton { objectName: "cupKeep"; visible: sheet.several.length === 0; strong: true; text: qsTr("Put it on the bench"); onClicked: sheet.keep() }
            BigButton { objectName: "cupFromLabel"; visible: sheet.row < 0 && !sheet.labelled; text: qsTr("From a label"); onClicked: sheet.editLabel() }
            BigButton { text: qsTr("Leave it"); onClicked: sheet.close() }
            BigButton { visible: sheet.row >= 0; text: qsTr("Take it off the bench"); onClicked: { sheet.board.remove(sheet.row); sheet.close() } }
        }
    }
}
