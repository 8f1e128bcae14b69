/** What takes danger out of a text: other meanings, and denials. */
import { list } from './words-now.ts';

/** Other meanings. They count nothing, whatever stands before them. None may begin a sentence of danger: "fire up there". */
export const CLEAR: readonly string[] =
  list(`smoke detector, smoke detectors, smoke alarm, smoke alarms, smoke test, smoke pencil, smoke break, smoke free,
  smoke is gone, smoke is all gone, smoke all gone, smoke gone, smokes gone, smokes all gone, smoke has gone, smoke cleared, smoke has cleared,
  smoke is cleared, smoke stopped, smoke has stopped, smoke went away, smoke smell is gone, smoke smell gone, stopped smoking,
  stopped burning, quit smoking, burning smell is gone, burning smell gone, burning smell stopped, burning smell went away,
  gas smell is gone, gas smell gone, gas smell went away, cigarette smoke, cigar smoke, smoking a cigarette, smoking a cigar, customer is smoking, homeowner is smoking, owner is smoking, tenant is smoking, neighbor is smoking, husband is smoking, smoked a cigarette, smoke a cigarette, smoking cigarettes, smokes cigarettes,
  smokes cigars, bbq smoke, barbecue smoke, grill smoke, smoke from the grill, smoke from the bbq, smoke from the wildfire,
  wildfire smoke, smokes inside, ya no hay humo, ya se fue el humo, detector de humo, detectores de humo, alarma de humo, shock absorber,
  shock absorbers, shock absorbing, shock mount, shock mounts, shock hazard, shock proof, risk of shock, shock risk, thermal shock,
  sticker shock, shocked at the price, shocked at the bill, shocked at the cost, shocked by the price, shocked how clean, shocked how dirty, shocked to see, shocked to hear,
  fire up the unit, fire up the system, fire up the compressor, fire up the condenser, fire up the furnace, fire up the fan,
  fire up the ac, fire up unit, to fire up, will fire up, wont fire up, fires up, fires right up, fired up, firing up, fire it up,
  fire it back up, fire her up, fire the unit up, fire the tech, fire that tech, fire hazard, fire rated, fire code, fire wall, fire sprinkler, fire damper,
  fire dampers, fire alarm, fire alarm panel, fire caulk, fire stop, fire door, fire marshal, fire inspector, fire station,
  fire hydrant, fire escape, fire pit, fire ants, fire ant, fire wood, fire blocking, fire resistant, fire retardant,
  in case of fire, flame sensor, flame sensors, flame rod, flame proof, flame retardant, pilot flame, burning off dust, burning the dust off, passed out flyers, humo no hay, wood burning, oil burning,
  gas burning, explosion proof, exploded view, explosion risk, bit by bit, got bit of, could hurt, might hurt, may hurt,
  bleeding off, bleeding down, bleeding air, bleeding the, spark plug, arc rated, arc fault, arc flash label, arc flash sticker,
  arc flash rated, arc flash rating, arc flash suit, arc flash gear, arc flash gloves, arc flash hood, arc flash shield, arc flash kit,
  arc flash boundary, arc flash study, arc flash training, arc flash category, melting point, ice melted, ice is melting,
  ice has melted, ice all melted, ice is melted, melting ice, melted ice, frost melted, snow melted, melted off, freezer burn,
  collapsed duct, duct collapsed, duct is collapsed, collapsed flex, flex collapsed, collapsed filter, filter collapsed,
  filter is collapsed, collapsed liner, helper is down the, helper is down at, helper is down there, cap got me thinking, capacitor got me thinking, no pulse on, no pulse signal, no pulse from, carbon monoxide detector, carbon monoxide alarm`);

const words = (text: string): Set<string> => new Set(text.trim().split(/\s+/));

/**
 * Words that deny what follows, and the only words that may stand between. A pronoun ends the denial: in "no I smell
 * smoke" the no answers something else. So does "the": "can't get the fire out".
 */
export const DENIALS: readonly { by: ReadonlySet<string>; over: ReadonlySet<string> }[] = [
  {
    by: words('no none without zero sin ningun ninguna'),
    over: words(
      `any more longer sign signs evidence trace traces hint smell smells odor odour of visible further active actual current
      electrical such on marks mark hay sale veo hubo tiene mas se`,
    ),
  },
  {
    by: words('cant cannot couldnt'),
    over: words('see smell find feel hear any'),
  },
  {
    by: words(`not never nothing nobody noone one isnt arent wasnt werent dont doesnt didnt havent hasnt hadnt wont wouldnt shouldnt aint
      neither nadie nunca tampoco`),
    over: words(`a an any anything anyone anymore more see seen saw seeing smell smells smelled smelling smelt feel felt get gets got getting
      have had having been be being was is found find hear heard else here ever yet one single look looks like sound sign signs trace of visible on
      resulto esta salio se`),
  },
];
