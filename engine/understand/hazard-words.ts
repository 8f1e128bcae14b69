/**
 * Words that mean danger, as people type them. Lower case, without accents, apostrophes and punctuation.
 *
 * `now` raises the emergency. `maybe` asks one tap, because it is also the trade's word for an old mark. `clear` takes
 * words out of the reading that only look like danger. The longest phrase at a place counts.
 */
import type { Body } from '../schema.ts';

export type Hazard = Body<'alarmed'>['hazard'];
export type Weight = 'now' | 'maybe' | 'clear';

const list = (phrases: string): string[] => phrases.split(',').map((phrase) => phrase.trim());

export const NOW: readonly [Hazard, string[]][] = [
  [
    'shock',
    list(`shock, shocked, shocks, shocking, schock, schocked, shok, shoked, shockd, shoked me, electric shock, electrocuted,
      electrocution, electricuted, electrecuted, electrocuded, elecrocuted, got bit, got bitten, gotbit, gotshocked, bit me, bites me,
      bit him, bit her, bit by, bitten by, bit my hand, bit my finger, bit my arm, been bit, was bit, got zapped, got zaped,
      zapped me, zapped him, zapped her, zapped my, zaped me, was zapped, been zapped, i zapped, zap me, got a zap, got hit by,
      got hit with, lit me up, got lit up, me dio corriente, me dio la corriente, me dio toque, me dio un toque, me pego la corriente,
      me agarro la corriente, toque electrico, descarga electrica, choque electrico, electrocutado, electrocuto, electrocutada`),
  ],
  [
    'fire',
    list(`fire, fier, fires, onfire, on fire, caught fire, catching fire, flame, flames, flamed, flaming, flams, in flames, ablaze,
      fuego, incendio, llama, llamas, en llamas, se incendia, se incendio, se prendio`),
  ],
  [
    'smoke',
    list(
      'smoke, smoking, smokin, smokes, smokey, smoky, smoek, smok, smke, smokee, smoke smell, humo, humea, echa humo, sale humo, humeando',
    ),
  ],
  [
    'burning',
    list(`burning, burnin, buring, burnning, buning, burning smell, burningsmell, smell of burning, smells like burning,
      se quema, se esta quemando, quemandose, quemando, huele a quemado, olor a quemado`),
  ],
  [
    'explosion',
    list(
      'exploded, explodes, exploding, explosion, exploaded, explosed, explotion, explode, exploto, explosion electrica',
    ),
  ],
  [
    'gas',
    list(`gas smell, gassmell, smell gas, smells gas, smell of gas, smelling gas, smelled gas, smelt gas, smells like gas, smell like gas,
      gas odor, gas odour, odor of gas, smell natural gas, smell propane, smells like propane, propane smell, natural gas smell,
      rotten egg smell, rotten eggs, smells like rotten eggs, huele a gas, olor a gas`),
  ],
  [
    'hurt',
    list(`hurt, hurting, injured, injury, bleeding, someone hurt, got hurt, burned my, burnt my, burned his, burned her, burned myself,
      burnt myself, burnt his, man down, fell off the roof, fell off the ladder, fell off ladder, fell off roof, fell from the roof,
      fell from the ladder, ambulance, herido, herida, lastimado, lastimada, me queme, se lastimo, sangrando`),
  ],
  [
    'collapse',
    list(`fainted, fainting, faint, faintd, passed out, pased out, past out, passing out, passes out, unconscious, unconcious,
      unconsious, not breathing, isnt breathing, stopped breathing, cant breathe, cannot breathe, no pulse, he collapsed, she collapsed,
      helper collapsed, customer collapsed, guy collapsed, partner collapsed, he blacked out, she blacked out, i blacked out,
      he is not moving, hes not moving, se desmayo, desmayado, desmayada, inconsciente, no respira`),
  ],
  [
    'heat',
    list(`heat stroke, heatstroke, heat stoke, heatstoke, heat strok, heatstrok, heat exhaustion, heat exaustion, sunstroke,
      sun stroke, golpe de calor, insolacion`),
  ],
];

export const MAYBE: readonly [Hazard, string[]][] = [
  [
    'burning',
    list(`burnt, burned, brunt, bunred, burn, burns, burn mark, burn marks, burnt smell, smells burnt, smells burned, burned up, burnt up,
      burned out, burnt out, scorched, scorch, charred, singed, melted, melting, pitted, pitting, fried, overheated wire,
      quemado, quemada, quemados, chamuscado, derretido`),
  ],
  [
    'fire',
    list(`arc, arcs, arced, arcing, arcd, arcking, arked, arking, spark, sparks, sparked, sparking, sparky, igniter, ignitor, igniters,
      ignition, fire extinguisher, flame rollout, flame roll out, chispa, chispas, chispazo, arco electrico`),
  ],
  [
    'smoke',
    list(
      'smoked, smoke detector going off, smoke alarm going off, smoke detector is going off, smoke alarm is going off',
    ),
  ],
  ['shock', list('zapped, zap, tingle, tingled, tingling, got nailed, got lit')],
  ['explosion', list('blew up, blown up, blew apart, popped off, burst')],
  ['gas', list('gas leak, leaking gas, fuga de gas')],
  ['collapse', list('collapsed, blacked out, unresponsive, dizzy')],
];

/** Other meanings. They count nothing, whatever stands before them. */
export const CLEAR: readonly string[] =
  list(`smoke detector, smoke detectors, smoke alarm, smoke alarms, smoke test, smoke pencil, smoke break,
  smoke is gone, smoke gone, smokes gone, smoke has gone, smoke cleared, smoke has cleared, smoke is cleared, smoke stopped, smoke has stopped, smoke smell is gone,
  smoke smell gone, burning smell is gone, burning smell gone, burning smell stopped, burning smell went away, gas smell is gone,
  gas smell gone, smoke went away, shock absorber, shock absorbers, shock absorbing, shock mount, shock mounts, shock hazard, shock proof,
  risk of shock, shock risk, thermal shock, fire up, fires up, fired up, firing up, fire it up, fire it back up, fire her up, fire the unit up,
  fire the unit, fire hazard, fire rated, fire code, fire wall, fire stop, fire sprinkler, in case of fire, flame sensor, flame sensors,
  flame rod, flame proof, flame retardant, pilot flame, explosion proof, exploded view, explosion risk, bit by bit, got bit of,
  could hurt, can hurt, might hurt, may hurt, arc flash label, arc flash rated, arc rated, arc flash suit, arc flash gear, arc flash gloves,
  arc flash category, spark plug, burn in, cd burner, detector de humo, detectores de humo, alarma de humo, ya no hay humo, ya se fue el humo,
  burned calories, non smoking, smoke free`);

/** Words that deny what follows. Between them and the danger only `GAP` words may stand, and no comma or full stop. */
export const NEGATORS = new Set(
  `no not never without none nothing nobody isnt arent wasnt werent dont doesnt didnt havent hasnt hadnt cant cannot couldnt wont
  aint nor neither sin ningun ninguna nunca tampoco noone`.split(/\s+/),
);

export const GAP = new Set(
  `a an any anymore more the of sign signs trace traces hint visible sight sort kind further actual active current electrical
  see seen saw seeing smell smelled smelling smelt feel felt get got getting have had having been be was is are there find found hear heard
  one person people here it i we he she they or ever yet hay veo huele sale hubo mas de se me`.split(/\s+/),
);
