#include "app/usecases/cautions.h"

#include <algorithm>

namespace flowkin {

const char* Caution(Hazard hazard) {
  switch (hazard) {
    case Hazard::kPaint:
      return "Gloves, good air, no food or drink at the bench. Follow the "
             "label and safety data sheet of every product; ask trained people "
             "where in doubt.";
    case Hazard::kPowder:
      return "Powder: raise no dust and wet it at once; some pigments harm "
             "when breathed. A dust mask is no respirator: what is needed "
             "stands on the label or is said by a professional.";
    case Hazard::kFlame:
      return "Torch or heat gun: nothing that burns or gives off vapour "
             "nearby, no loose sleeves or hair, not over plastic cups, short "
             "passes, something to put out a fire at hand.";
    case Hazard::kAlcohol:
      return "Alcohol and solvents catch fire from a spark at room "
             "temperature: no flame, heat gun or switch near them until the "
             "room is aired; follow the label.";
    case Hazard::kResin:
      return "Uncured resin and hardener can make the skin allergic for life; "
             "thin gloves protect little. Follow the data sheet and ask for "
             "the gloves it names.";
    case Hazard::kWaste:
      return "Paint and rinse water do not go into drains or ground: let them "
             "settle, use the clear part again, dry the rest. Local rules "
             "decide; colours with heavy metals are hazardous waste.";
    case Hazard::kFood:
      return "Mark paint cups and bottles, water bottles too; a container "
             "that held paint is never used for food again. Keep children "
             "and animals away.";
    case Hazard::kBlowing:
      return "Blowing for long makes dizzy: pause, and never draw breath "
             "through the straw.";
    case Hazard::kWeight:
      return "Two people carry a large wet canvas; wet paint on the floor is "
             "slippery.";
    case Hazard::kElectricity:
      return "Keep cables of lamp and camera off the table and hands dry; "
             "mains and water do not go together.";
  }
  return "";
}

std::vector<std::string> Cautions(const std::vector<Hazard>& hazards) {
  std::vector<std::string> cautions;
  for (const Hazard hazard : hazards) {
    const std::string caution = Caution(hazard);
    if (std::find(cautions.begin(), cautions.end(), caution) ==
        cautions.end()) {
      cautions.push_back(caution);
    }
  }
  return cautions;
}

}  // namespace flowkin
