import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// From the canvas to what must stand ready.
ScrollPage {
    id: screen

    required property Desk desk
    signal benchAsked
    readonly property Planner planner: desk.planner
    readonly property var form: planner.form
    readonly property var amounts: planner.amounts

    title: qsTr("Plan")
    Component.onCompleted: planner.visit()

    FileDialog {
        id: save
        title: qsTr("Keep the plan as")
        fileMode: FileDialog.SaveFile
        defaultSuffix: "json"
        nameFilters: ["JSON (*.json)"]
        onAccepted: screen.planner.keepPlan(selectedFile)
    }

    // What comes out, first.
    Rectangle {
        Layout.fillWidth: true
        implicitHeight: glance.implicitHeight + Theme.edge * 2
        radius: Theme.round
        color: screen.planner.filmHolds ? Theme.wash : Theme.warmWash
        ColumnLayout {
            id: glance
            x: Theme.edge
            y: Theme.edge
            width: parent.width - Theme.edge * 2
            Words {
                objectName: "planTrouble"
                Layout.fillWidth: true
                visible: text.length > 0
                text: screen.planner.trouble
                font.pixelSize: Theme.large
                font.bold: true
                color: Theme.warm
                Accessible.role: Accessible.AlertMessage
            }
            Words {
                objectName: "planSummary"
                Layout.fillWidth: true
                visible: text.length > 0
                text: screen.planner.summary
                font.pixelSize: Theme.px(34)
                font.bold: true
            }
            Words { Layout.fillWidth: true; visible: text.length > 0; text: screen.planner.film; font.pixelSize: Theme.large }
            Words { Layout.fillWidth: true; visible: text.length > 0; text: screen.planner.source; color: Theme.quiet }
        }
    }

    Heading { Layout.fillWidth: true; text: qsTr("Canvas") }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Labelled {
            name: qsTr("Shape")
            Choice {
                objectName: "planShape"
                width: parent.width
                label: qsTr("Shape")
                model: [qsTr("rectangle"), qsTr("round")]
                currentIndex: screen.form["shape"]
                onActivated: index => screen.planner.set("shape", index)
            }
        }
        Labelled {
            wide: Theme.px(140)
            name: screen.form["shape"] === 1 ? qsTr("Diameter (%1)").arg(screen.planner.lengthUnit) : qsTr("Length (%1)").arg(screen.planner.lengthUnit)
            Field { objectName: "planLength"; width: parent.width; label: qsTr("Length or diameter"); text: screen.form["length"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: screen.planner.set("length", text) }
        }
        Labelled {
            wide: Theme.px(140)
            visible: screen.form["shape"] === 0
            name: qsTr("Width (%1)").arg(screen.planner.lengthUnit)
            Field { objectName: "planWidth"; width: parent.width; label: qsTr("Width"); text: screen.form["width"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: screen.planner.set("width", text) }
        }
        Labelled {
            wide: Theme.px(140)
            name: qsTr("Depth (%1)").arg(screen.planner.lengthUnit)
            Field { objectName: "planDepth"; width: parent.width; label: qsTr("Depth"); text: screen.form["depth"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: screen.planner.set("depth", text) }
        }
        Labelled {
            wide: Theme.px(120)
            name: qsTr("How many")
            Field { objectName: "planCount"; width: parent.width; label: qsTr("How many canvases"); text: screen.form["count"]; inputMethodHints: Qt.ImhDigitsOnly; onEditingFinished: screen.planner.set("count", text) }
        }
        Beside { Tick { objectName: "planEdges"; text: qsTr("paint the sides too"); checked: screen.form["edges"]; onToggled: screen.planner.set("edges", checked) } }
    }

    Heading { Layout.fillWidth: true; text: qsTr("Technique") }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Labelled {
            wide: Theme.px(220)
            name: qsTr("Way of pouring")
            Choice {
                objectName: "planTechnique"
                width: parent.width
                label: qsTr("Way of pouring")
                model: screen.planner.techniques
                currentIndex: screen.form["technique"]
                onActivated: index => screen.planner.set("technique", index)
            }
        }
        Labelled {
            wide: Theme.px(210)
            name: qsTr("Base coat (%1)").arg(screen.planner.coverUnit)
            Field { id: baseAmount; objectName: "planBase"; width: parent.width; label: qsTr("Base coat on the canvas"); text: screen.amounts["base"]; inputMethodHints: Qt.ImhFormattedNumbersOnly }
        }
        Labelled {
            name: qsTr("Colours (%1)").arg(screen.planner.coverUnit)
            Field { id: colourAmount; objectName: "planColoursAmount"; width: parent.width; label: qsTr("Colours on the canvas"); text: screen.amounts["colours"]; inputMethodHints: Qt.ImhFormattedNumbersOnly }
        }
        Labelled {
            name: qsTr("Activator (%1)").arg(screen.planner.coverUnit)
            Field { id: activatorAmount; objectName: "planActivator"; width: parent.width; label: qsTr("Activator on the canvas"); text: screen.amounts["activator"]; inputMethodHints: Qt.ImhFormattedNumbersOnly }
        }
        Beside { BigButton { objectName: "planKeepAmounts"; text: qsTr("Keep these amounts"); onClicked: screen.planner.keepAmounts(baseAmount.text, colourAmount.text, activatorAmount.text) } }
        Beside { visible: screen.amounts["own"]; BigButton { objectName: "planDropAmounts"; text: qsTr("Back to the starting amounts"); onClicked: screen.planner.dropAmounts() } }
    }
    Words { Layout.fillWidth: true; text: screen.planner.what; color: Theme.quiet }

    Heading { Layout.fillWidth: true; text: qsTr("Colours") }
    Repeater {
        model: screen.planner.colours.length
        Flow {
            id: colour
            required property int index
            readonly property var line: screen.planner.colours[index] || ({})
            Layout.fillWidth: true
            spacing: Theme.gap
            Words { width: Theme.px(180); height: Theme.touch; verticalAlignment: Text.AlignVCenter; text: colour.line["name"] || ""; font.bold: true }
            Choice {
                objectName: "planBody" + colour.index
                width: Theme.px(180)
                label: qsTr("Body of %1").arg(colour.line["name"] || "")
                model: screen.planner.bodies
                currentIndex: colour.line["body"] || 0
                onActivated: index => screen.planner.setColour(colour.index, "body", index)
            }
            Words { height: Theme.touch; verticalAlignment: Text.AlignVCenter; text: qsTr("parts"); Accessible.ignored: true }
            Field {
                objectName: "planShare" + colour.index
                width: Theme.px(90)
                label: qsTr("Parts of %1").arg(colour.line["name"] || "")
                text: colour.line["share"] || ""
                inputMethodHints: Qt.ImhFormattedNumbersOnly
                onEditingFinished: screen.planner.setColour(colour.index, "share", text)
            }
            BigButton { objectName: "planRemove" + colour.index; text: qsTr("Leave out"); Accessible.name: qsTr("Leave out %1").arg(colour.line["name"] || ""); onClicked: screen.planner.removeColour(colour.index) }
        }
    }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Field {
            id: newColour
            objectName: "planNewColour"
            width: Theme.px(240)
            label: qsTr("Name of another colour")
            placeholderText: qsTr("another colour")
            onAccepted: { screen.planner.addColour(text); clear() }
        }
        BigButton { objectName: "planAddColour"; text: qsTr("Add it"); enabled: newColour.text.length > 0; onClicked: { screen.planner.addColour(newColour.text); newColour.clear() } }
        BigButton { objectName: "planFromBench"; text: qsTr("Take those of the bench"); onClicked: screen.planner.takeFromBench() }
    }

    Heading { Layout.fillWidth: true; text: qsTr("First mixes, before any water") }
    Repeater {
        model: screen.planner.cups
        ColumnLayout {
            id: cup
            required property var modelData
            Layout.fillWidth: true
            spacing: 0
            Words {
                Layout.fillWidth: true
                text: cup.modelData["title"]
                font.pixelSize: Theme.large
                font.bold: true
            }
            Words { Layout.fillWidth: true; text: cup.modelData["how"] }
            Words { Layout.fillWidth: true; visible: text.length > 0; text: cup.modelData["remark"]; color: Theme.quiet }
        }
    }

    BigButton { objectName: "planToBench"; visible: screen.planner.planned; strong: true; text: qsTr("Put these cups on the bench"); onClicked: { screen.planner.putOnBench(); screen.benchAsked() } }

    Heading { Layout.fillWidth: true; text: qsTr("Pouring medium") }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Labelled { wide: Theme.px(140); name: qsTr("Parts of base"); Field { objectName: "planBaseParts"; width: parent.width; label: qsTr("Parts of base"); text: screen.form["baseParts"]; onEditingFinished: screen.planner.set("baseParts", text) } }
        Labelled { wide: Theme.px(140); name: qsTr("Parts of varnish"); Field { objectName: "planVarnishParts"; width: parent.width; label: qsTr("Parts of varnish"); text: screen.form["varnishParts"]; onEditingFinished: screen.planner.set("varnishParts", text) } }
        Labelled {
            name: qsTr("Measured by")
            Choice { objectName: "planBy"; width: parent.width; label: qsTr("Measured by"); model: [qsTr("volume"), qsTr("weight")]; currentIndex: screen.form["byWeight"] ? 1 : 0; onActivated: index => screen.planner.set("byWeight", index === 1) }
        }
        Labelled { name: qsTr("Cup, bottom (%1)").arg(screen.planner.lengthUnit); Field { objectName: "planCupBottom"; width: parent.width; label: qsTr("Inner diameter of the cup at the bottom"); text: screen.form["cupBottom"]; onEditingFinished: screen.planner.set("cupBottom", text) } }
        Labelled { name: qsTr("Cup, rim (%1)").arg(screen.planner.lengthUnit); Field { objectName: "planCupTop"; width: parent.width; label: qsTr("Inner diameter of the cup at the rim"); text: screen.form["cupTop"]; onEditingFinished: screen.planner.set("cupTop", text) } }
        Labelled { name: qsTr("Cup, height (%1)").arg(screen.planner.lengthUnit); Field { objectName: "planCupHeight"; width: parent.width; label: qsTr("Inner height of the cup"); text: screen.form["cupHeight"]; onEditingFinished: screen.planner.set("cupHeight", text) } }
        Labelled { wide: Theme.px(300); name: qsTr("Its flow as tested, 1 = base coat"); Field { objectName: "planMediumFlow"; width: parent.width; label: qsTr("Flow of this batch as tested, 1 is the base coat"); text: screen.form["mediumFlow"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: screen.planner.set("mediumFlow", text) } }
        Labelled { wide: Theme.px(240); name: qsTr("Flow of the last batch"); Field { objectName: "planLastFlow"; width: parent.width; label: qsTr("Flow of the last batch as tested, 1 is the base coat"); text: screen.form["lastFlow"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: screen.planner.set("lastFlow", text) } }
    }
    Repeater {
        model: screen.planner.medium
        Words { required property string modelData; Layout.fillWidth: true; text: modelData; font.pixelSize: Theme.large }
    }

    Heading { Layout.fillWidth: true; text: qsTr("To spare") }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Labelled { wide: Theme.px(240); name: qsTr("Kept back unthinned (%)"); Field { objectName: "planReserve"; width: parent.width; label: qsTr("Kept back unthinned, per cent"); text: screen.form["reserve"]; onEditingFinished: screen.planner.set("reserve", text) } }
        Labelled { wide: Theme.px(240); name: qsTr("Lost to cups and sticks (%)"); Field { objectName: "planWaste"; width: parent.width; label: qsTr("Lost to cups and sticks, per cent"); text: screen.form["waste"]; onEditingFinished: screen.planner.set("waste", text) } }
        Labelled { name: qsTr("Water expected (%)"); Field { objectName: "planWater"; width: parent.width; label: qsTr("Water expected, per cent"); text: screen.form["water"]; onEditingFinished: screen.planner.set("water", text) } }
        Labelled { name: qsTr("Tests of each cup"); Field { objectName: "planTests"; width: parent.width; label: qsTr("Tests of each cup"); text: screen.form["tests"]; onEditingFinished: screen.planner.set("tests", text) } }
    }

    Heading { Layout.fillWidth: true; text: qsTr("To have ready") }
    Words { Layout.fillWidth: true; text: screen.planner.cost; font.pixelSize: Theme.large }
    Repeater {
        model: screen.planner.supplies.length
        Flow {
            id: supply
            required property int index
            readonly property var line: screen.planner.supplies[index] || ({})
            readonly property string thing: line["name"] || ""
            Layout.fillWidth: true
            spacing: Theme.gap
            Column {
                width: Theme.px(260)
                Words { width: parent.width; text: supply.thing; font.bold: true }
                Words { width: parent.width; text: supply.line["needed"] || "" }
                Words { width: parent.width; text: supply.line["buy"] || ""; color: Theme.warm; font.bold: true }
            }
            Labelled { wide: Theme.px(130); name: qsTr("at hand (%1)").arg(screen.desk.board.volumeUnit); Field { objectName: "planAtHand" + supply.index; width: parent.width; label: qsTr("At hand of %1").arg(supply.thing); text: supply.line["atHand"] || ""; onEditingFinished: screen.planner.setSupply(supply.index, "atHand", text) } }
            Labelled { wide: Theme.px(130); name: qsTr("container (%1)").arg(screen.desk.board.volumeUnit); Field { objectName: "planContainer" + supply.index; width: parent.width; label: qsTr("Container of %1").arg(supply.thing); text: supply.line["container"] || ""; onEditingFinished: screen.planner.setSupply(supply.index, "container", text) } }
            Labelled { wide: Theme.px(130); name: qsTr("its price"); Field { objectName: "planPrice" + supply.index; width: parent.width; label: qsTr("Price of a container of %1").arg(supply.thing); text: supply.line["price"] || ""; onEditingFinished: screen.planner.setSupply(supply.index, "price", text) } }
        }
    }

    Heading { Layout.fillWidth: true; text: qsTr("Left over on the shelf") }
    Tick { objectName: "planFollow"; Layout.fillWidth: true; text: qsTr("use what the book knows: left-overs and your earlier pours"); checked: screen.form["follow"]; onToggled: screen.planner.set("follow", checked) }
    Repeater {
        model: screen.planner.shelf
        Flow {
            id: jar
            required property var modelData
            Layout.fillWidth: true
            spacing: Theme.gap
            Column {
                width: Theme.px(420)
                Words { width: parent.width; text: jar.modelData["name"] + ", " + jar.modelData["volume"]; font.bold: true }
                Words { width: parent.width; text: jar.modelData["state"]; color: jar.modelData["due"] ? Theme.warm : Theme.quiet }
            }
            BigButton { text: qsTr("Gone"); Accessible.name: qsTr("%1 is gone").arg(jar.modelData["name"]); onClicked: screen.planner.takeJar(jar.modelData["jar"]) }
        }
    }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Labelled { wide: Theme.px(220); name: qsTr("What is left over"); Field { id: jarName; objectName: "jarName"; width: parent.width; label: qsTr("What is left over") } }
        Labelled { name: qsTr("What it is"); Choice { id: jarRole; objectName: "jarRole"; width: parent.width; label: qsTr("What it is"); model: [qsTr("colour"), qsTr("base coat"), qsTr("activator"), qsTr("pouring medium")] } }
        Labelled { wide: Theme.px(140); name: qsTr("How much (%1)").arg(screen.desk.board.volumeUnit); Field { id: jarVolume; objectName: "jarVolume"; width: parent.width; label: qsTr("How much"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Beside { Tick { id: jarWater; objectName: "jarWater"; text: qsTr("thinned with water") } }
        Beside {
            BigButton {
                objectName: "jarPut"
                text: qsTr("Put it on the shelf")
                enabled: jarName.text.length > 0 && jarVolume.text.length > 0
                onClicked: {
                    jarWrong.text = screen.planner.putOnShelf(jarName.text, jarRole.currentIndex, jarVolume.text, jarWater.checked)
                    if (jarWrong.text.length === 0) { jarName.clear(); jarVolume.clear() }
                }
            }
        }
        Beside { visible: screen.planner.canPutBack; BigButton { objectName: "jarBack"; text: qsTr("It is not gone"); onClicked: screen.planner.putBack() } }
    }
    Words { id: jarWrong; Layout.fillWidth: true; visible: text.length > 0; color: Theme.warm; font.bold: true; Accessible.role: Accessible.AlertMessage }

    Heading { Layout.fillWidth: true; visible: screen.planner.planned; text: qsTr("Mind") }
    Repeater {
        model: screen.planner.notes
        Words { required property string modelData; Layout.fillWidth: true; text: modelData }
    }
    Repeater {
        model: screen.planner.cautions
        Words { required property string modelData; Layout.fillWidth: true; text: modelData; color: Theme.quiet }
    }
    BigButton { objectName: "planKeep"; visible: screen.planner.planned; text: qsTr("Keep the plan as a file …"); onClicked: save.open() }
}
