import QtQuick
import QtTest
import Flowkin

Item {
    width: 800
    height: 600

    BigButton {
        id: button
        property int presses: 0
        text: "Press"
        onClicked: presses += 1
    }
    FlowBar {
        id: bar
        y: 100
        width: 400
        verdict: "thicker"
        at: 0.8
        low: 0.7
        high: 0.9
        bandLow: 0.45
        bandHigh: 0.55
    }
    Choice {
        id: choice
        y: 200
        width: 200
        label: "Colour"
        model: ["red", "blue"]
    }
    Tick {
        id: tick
        y: 300
        text: "yes"
    }
    Field {
        id: field
        y: 400
        label: "Volume"
    }

    TestCase {
        name: "Parts"
        when: windowShown

        function test_buttonTakesMouseAndKeys() {
            button.presses = 0
            mouseClick(button)
            compare(button.presses, 1)
            button.forceActiveFocus()
            keyClick(Qt.Key_Space)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_Enter)
            compare(button.presses, 4)
        }

        // Common practice in guidelines for touch: 9 mm or more, which at 96
        // dots an inch is 34 px; wet knuckles get half as much again.
        function test_targetsAreLarge_data() {
            return [{tag: "button", item: button}, {tag: "choice", item: choice}, {tag: "tick", item: tick}, {tag: "field", item: field}]
        }
        function test_targetsAreLarge(data) {
            verify(data.item.height >= 51, data.tag + " is " + data.item.height + " px high")
        }

        function test_everythingGrowsWithTheSize() {
            const before = button.implicitHeight
            Theme.size = 2
            verify(button.implicitHeight >= 2 * before - 2)
            Theme.size = 1
        }

        function test_everyPartHasAName_data() {
            return [{tag: "button", item: button, name: "Press"}, {tag: "choice", item: choice, name: "Colour"}, {tag: "tick", item: tick, name: "yes"}, {tag: "field", item: field, name: "Volume"}]
        }
        function test_everyPartHasAName(data) {
            compare(data.item.Accessible.name, data.name)
        }

        // WCAG 2.1, success criteria 1.4.3 and 1.4.11: 4.5 to 1 for text, 3 to
        // 1 for what tells the state of a control.
        function luminance(colour) {
            const part = value => value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4)
            return 0.2126 * part(colour.r) + 0.7152 * part(colour.g) + 0.0722 * part(colour.b)
        }
        function contrast(a, b) {
            const x = luminance(a)
            const y = luminance(b)
            return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05)
        }
        function test_contrast_data() {
            return [{tag: "light", dark: false}, {tag: "dark", dark: true}]
        }
        function test_contrast(data) {
            Theme.dark = data.dark
            for (const ground of [Theme.paper, Theme.card, Theme.wash])
                for (const text of [Theme.ink, Theme.quiet, Theme.warm])
                    verify(contrast(text, ground) >= 4.5, text + " on " + ground + ": " + contrast(text, ground))
            verify(contrast(Theme.deepInk, Theme.deep) >= 4.5)
            verify(contrast(Theme.deep, Theme.card) >= 3)
            Theme.dark = false
        }

        // Not by colour alone: the pictures of two verdicts at the same place
        // differ once colour is gone.
        function grey(verdict) {
            bar.verdict = verdict
            const image = grabImage(bar)
            let sum = []
            for (let x = 0; x < image.width; x += 2)
                for (let y = 0; y < image.height; y += 2)
                    sum.push(Math.round(luminance(image.pixel(x, y)) * 20))
            return sum.join()
        }
        function test_verdictsDifferInShape() {
            const seen = {}
            for (const verdict of ["match", "thicker", "thinner", "undecided"]) {
                const picture = grey(verdict)
                verify(!(picture in seen), verdict + " looks like " + seen[picture])
                seen[picture] = verdict
            }
        }
    }
}
