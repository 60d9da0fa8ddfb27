<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
    <context>
        <name>CupForm</name>
        <message numerus="yes">
            <source>There are %n labels on this photo: %1.</source>
            <translation>
                <numerusform>There is %n label on this photo: %1.</numerusform>
                <numerusform>There are %n labels on this photo: %1.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Wording</name>
        <message numerus="yes">
            <source>%n drop(s) %1</source>
            <translation>
                <numerusform>%n drop %1</numerusform>
                <numerusform>%n drops %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n pump stroke(s) %1</source>
            <translation>
                <numerusform>%n pump stroke %1</numerusform>
                <numerusform>%n pump strokes %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Film %1 %n time(s).</source>
            <translation>
                <numerusform>Film %1 %n time.</numerusform>
                <numerusform>Film %1 %n times.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %n film(s)</source>
            <translation>
                <numerusform>%1: %n film</numerusform>
                <numerusform>%1: %n films</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>, %n more</source>
            <translation>
                <numerusform>, %n more</numerusform>
                <numerusform>, %n more</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n cup(s) match</source>
            <translation>
                <numerusform>%1 of %n cup matches</numerusform>
                <numerusform>%1 of %n cups match</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::BenchBoard</name>
        <message numerus="yes">
            <source>stirred %n min ago</source>
            <translation>
                <numerusform>stirred %n min ago</numerusform>
                <numerusform>stirred %n min ago</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stirred %n h ago</source>
            <translation>
                <numerusform>stirred %n h ago</numerusform>
                <numerusform>stirred %n h ago</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::Camera</name>
        <message numerus="yes">
            <source>%1 pictures a second, %n lost</source>
            <translation>
                <numerusform>%1 pictures a second, %n lost</numerusform>
                <numerusform>%1 pictures a second, %n lost</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::CellRoom</name>
        <message numerus="yes">
            <source>%n whole cell(s) on %1 cm²</source>
            <translation>
                <numerusform>%n whole cell on %1 cm²</numerusform>
                <numerusform>%n whole cells on %1 cm²</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipQueue</name>
        <message numerus="yes">
            <source>measuring, %n clip(s) to go</source>
            <translation>
                <numerusform>measuring, %n clip to go</numerusform>
                <numerusform>measuring, %n clips to go</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::FilmStand</name>
        <message numerus="yes">
            <source>%1: %n more</source>
            <translation>
                <numerusform>%1: %n more</numerusform>
                <numerusform>%1: %n more</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::JournalReader</name>
        <message numerus="yes">
            <source>%n pour(s)</source>
            <translation>
                <numerusform>%n pour</numerusform>
                <numerusform>%n pours</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n judged</source>
            <translation>
                <numerusform>%n judged</numerusform>
                <numerusform>%n judged</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n film(s)</source>
            <translation>
                <numerusform>%n film</numerusform>
                <numerusform>%n films</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::Planner</name>
        <message numerus="yes">
            <source>From your own pours: %n so far, which took %1 times what was planned (%2 to %3).</source>
            <translation>
                <numerusform>From your own pours: %n so far, which took %1 times what was planned (%2 to %3).</numerusform>
                <numerusform>From your own pours: %n so far, which took %1 times what was planned (%2 to %3).</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Too few pours to tell how much yours take: %n of three.</source>
            <translation>
                <numerusform>Too few pours to tell how much yours take: %n of three.</numerusform>
                <numerusform>Too few pours to tell how much yours take: %n of three.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>buy %n container(s) for %1</source>
            <translation>
                <numerusform>buy %n container for %1</numerusform>
                <numerusform>buy %n containers for %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>flowkin::PrintRoom</name>
        <message numerus="yes">
            <source>%n photo(s) could not be read and are left out.</source>
            <translation>
                <numerusform>%n photo could not be read and is left out.</numerusform>
                <numerusform>%n photos could not be read and are left out.</numerusform>
            </translation>
        </message>
    </context>
</TS>
