/** Words that are also the trade's for an old mark, or have an everyday meaning: they ask one tap. */
import { type Hazard, list } from './words-now.ts';

export const MAYBE: readonly [Hazard, string[]][] = [
  [
    'burning',
    list(`burnt, burned, burn, burns, burnt smell, smells burnt, smells burned, smell burnt, scorched, scorch,
      charred, singed, melted, melting, pitted, pitting, fried, burning hot, burning up in here, burning up contactors,
      burning up capacitors, burning up caps, burning up motors, burning through, burning out, quemado, quemada, quemados, chamuscado,
      derretido`),
  ],
  [
    'fire',
    list(`fires, flame, arc, arcs, arced, arcing, spark, sparks, sparked, sparking, sparky, igniter, ignitor,
      igniters, fire extinguisher, fire is out, fire was put out, fire has been put out, fire alarm going off, fire alarm is going off,
      fire alarm went off, glowing red, red hot, chispa, chispas, chispazo, arco electrico`),
  ],
  [
    'smoke',
    list(`smoked, smoke detector going off, smoke alarm going off, smoke alarms going off, smoke detector is going off,
      smoke alarm is going off, smoke alarm went off, smoke detector went off, smoke alarm beeping,
      smoke alarm ringing, smoke alarm is ringing, smoke alarm is beeping`),
  ],
  [
    'shock',
    list(
      'zapped, zap, tingle, tingled, tingles, tingling, got nailed, got buzzed, touched the wire, touched the bus, touched the line side, got hit by, got hit with',
    ),
  ],
  ['explosion', list('blew up, blown up, blew apart')],
  ['gas', list('gas leak, leaking gas, fuga de gas, carbon monoxide')],
  [
    'hurt',
    list(
      'bleeding, hurts, got stung, he fell, she fell, i fell, helper fell, customer fell, in my eye, went numb, is numb, hit my hand, hit his hand, hit my arm, hit my head, hit his head, hit me in the',
    ),
  ],
  [
    'collapse',
    list('collapsed, blacked out, dizzy, feel faint, felt faint, feeling faint, feels faint, feel sick, passed out of'),
  ],
  ['heat', list('heat cramps, throwing up, vomiting, feeling the heat')],
];
