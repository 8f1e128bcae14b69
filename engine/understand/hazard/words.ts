/**
 * Words that mean danger, as people type them. Lower case, without accents, apostrophes and punctuation.
 *
 * `now` raises the emergency. `maybe` asks one tap, because it is also the trade's word for an old mark or has another
 * everyday meaning. `clear` takes words out of the reading that only look like danger. The longest phrase at a place
 * counts.
 */
import type { Body } from '../../schema.ts';

export type Hazard = Body<'alarmed'>['hazard'];
export type Weight = 'now' | 'maybe' | 'clear';

const list = (phrases: string): string[] => phrases.split(',').map((phrase) => phrase.trim());

export const NOW: readonly [Hazard, string[]][] = [
  [
    'shock',
    list(`shock, shocked, shocks, shocking, schock, schocked, shok, shoked, shockd, electric shock, electrocuted, electrocution,
      electricuted, electrecuted, electrocuded, elecrocuted, got bit, got bitten, gotbit, gotshocked, bit me, bites me, bit him, bit her,
      bit by, bitten by, bit my hand, bit my finger, bit my arm, been bit, was bit, got zapped, got zaped, zapped me, zapped him,
      zapped her, zapped my, zaped me, was zapped, been zapped, i zapped, zap me, got a zap, i got hit, got hit by 240, got hit by 230,
      got hit by 220, got hit by 208, got hit by 120, got hit by 277, got hit by 480, got hit by 24, got hit with 240, got hit with 120,
      got hit by the cap, got hit by the capacitor, got hit by voltage, got hit by current, lit me up, got lit up, me dio corriente,
      me dio la corriente, me dio toque, me dio un toque, me pego la corriente, me agarro la corriente, toque electrico,
      descarga electrica, choque electrico, electrocutado, electrocuto, electrocutada`),
  ],
  [
    'fire',
    list(`fire, fier, onfire, on fire, caught fire, catching fire, flames, flaming, flams, in flames, ablaze, fuego, incendio, llamas,
      en llamas, se incendia, se incendio, se prendio`),
  ],
  [
    'smoke',
    list(`smoke, smoking, smokin, smokes, smokey, smoky, smok, smke, smokee, smell of smoke, smoke smell, humo, humea, echa humo,
      humeando, olor a humo, huele a humo`),
  ],
  [
    'burning',
    list(`burning, burnin, buring, burnning, buning, burning smell, burningsmell, smell of burning, se quema, se esta quemando, quemandose,
      quemando, huele a quemado, olor a quemado`),
  ],
  ['explosion', list('exploded, explodes, exploding, explosion, explode, exploaded, explosed, explotion, exploto')],
  [
    'gas',
    list(`gas smell, gassmell, smell gas, smells gas, smell of gas, smelling gas, smelled gas, smelt gas, smells like gas, smell like gas,
      gas odor, gas odour, odor of gas, smell natural gas, smell propane, smells like propane, propane smell, natural gas smell,
      rotten egg smell, rotten eggs, smells like rotten eggs, huele a gas, olor a gas`),
  ],
  [
    'hurt',
    list(`hurt, hurting, injured, injury, someone hurt, got hurt, burned my, burnt my, burned his, burned her, burned myself, burnt myself,
      burnt his, i am bleeding, im bleeding, he is bleeding, hes bleeding, she is bleeding, shes bleeding, helper is bleeding,
      bleeding badly, bleeding bad, man down, fell off the roof, fell off the ladder, fell off ladder, fell off roof,
      fell from the roof, fell from the ladder, ambulance, herido, herida, lastimado, lastimada, me queme, se lastimo, sangrando`),
  ],
  [
    'collapse',
    list(`fainted, fainting, passed out, pased out, past out, passing out, passes out, unconscious, unconcious, unconsious, not breathing,
      isnt breathing, stopped breathing, cant breathe, cannot breathe, no pulse, he collapsed, she collapsed, helper collapsed,
      customer collapsed, guy collapsed, partner collapsed, i collapsed, he blacked out, she blacked out, i blacked out,
      he is not moving, hes not moving, he is unresponsive, hes unresponsive, she is unresponsive, helper unresponsive, se desmayo,
      desmayado, desmayada, inconsciente, no respira`),
  ],
  [
    'heat',
    list(`heat stroke, heatstroke, heat stoke, heatstoke, heat strok, heatstrok, heat exhaustion, heat exaustion, sunstroke, sun stroke,
      golpe de calor, insolacion`),
  ],
];

export const MAYBE: readonly [Hazard, string[]][] = [
  [
    'burning',
    list(`burnt, burned, brunt, bunred, burn, burns, burnt smell, smells burnt, smells burned, smell burnt, scorched, scorch, charred, singed,
      melted, melting, pitted, pitting, fried, quemado, quemada, quemados, chamuscado, derretido`),
  ],
  [
    'fire',
    list(`fires, flame, arc, arcs, arced, arcing, arcd, arcking, arked, arking, spark, sparks, sparked, sparking, sparky, igniter, ignitor,
      igniters, fire extinguisher, chispa, chispas, chispazo, arco electrico`),
  ],
  [
    'smoke',
    list(`smoked, smoke detector going off, smoke alarm going off, smoke alarms going off, smoke detector is going off,
      smoke alarm is going off, smoke alarm went off, smoke detector went off, smoke alarm beeping, smoke detector beeping,
      smoke alarm ringing, smoke alarm is ringing, smoke alarm is beeping`),
  ],
  ['shock', list('zapped, zap, tingle, tingled, tingling, got nailed, got hit by, got hit with')],
  ['explosion', list('blew up, blown up, blew apart')],
  ['gas', list('gas leak, leaking gas, fuga de gas')],
  ['hurt', list('bleeding')],
  ['collapse', list('collapsed, blacked out, dizzy, feel faint, felt faint, feeling faint, feels faint')],
];

/** Other meanings. They count nothing, whatever stands before them. None may begin a sentence of danger: "fire up there". */
export const CLEAR: readonly string[] =
  list(`smoke detector, smoke detectors, smoke alarm, smoke alarms, smoke test, smoke pencil,
  smoke is gone, smoke is all gone, smoke all gone, smoke gone, smoke has gone, smoke cleared, smoke has cleared, smoke is cleared,
  smoke stopped, smoke has stopped, smoke went away, smoke smell is gone, smoke smell gone, stopped smoking, stopped burning,
  quit smoking, burning smell is gone, burning smell gone, burning smell stopped, burning smell went away, gas smell is gone,
  gas smell gone, ya no hay humo, ya se fue el humo, detector de humo, detectores de humo, alarma de humo, shock absorber,
  shock absorbers, shock absorbing, shock mount, shock mounts, shock hazard, shock proof, risk of shock, shock risk, thermal shock,
  fire up the unit, fire up the system, fire up the compressor, fire up the condenser, fire up the furnace, fire up the fan,
  fire up the ac, fire up unit, to fire up, will fire up, wont fire up, fires up, fired up, firing up, fire it up, fire it back up,
  fire her up, fire the unit up, fire hazard, fire rated, fire code, fire wall, fire sprinkler, in case of fire, flame sensor,
  flame sensors, flame rod, flame proof, flame retardant, pilot flame, explosion proof, exploded view, explosion risk, bit by bit,
  got bit of, could hurt, might hurt, may hurt, bleeding off, bleeding down, bleeding air, bleeding the, spark plug, arc rated,
  arc flash label, arc flash rated, arc flash suit, arc flash gear, arc flash gloves, arc flash category, melting point`);

const words = (text: string): Set<string> => new Set(text.trim().split(/\s+/));

/**
 * Words that deny what follows, and the only words that may stand between. A pronoun ends the denial: in "no I smell
 * smoke" the no answers something else. So does "the": "can't get the fire out".
 */
export const DENIALS: readonly { by: ReadonlySet<string>; over: ReadonlySet<string> }[] = [
  {
    by: words('no none without zero sin ningun ninguna'),
    over: words(
      'any more longer sign signs trace traces hint of visible further active actual current electrical such hay sale veo hubo tiene mas',
    ),
  },
  {
    by: words('cant cannot couldnt'),
    over: words('see smell find feel hear any'),
  },
  {
    by: words(`not never nothing nobody noone one isnt arent wasnt werent dont doesnt didnt havent hasnt hadnt wont aint neither
      nunca tampoco`),
    over: words(`a an any anymore more see seen saw seeing smell smells smelled smelling smelt feel felt get gets got getting have had
      having been be being was is found find hear heard else here ever yet look looks like sound sign signs trace of visible`),
  },
];
