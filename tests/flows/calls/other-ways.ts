import { BLOWER_LIVE, FUSE_SHORT } from '../../../flows/examples/blower.ts';
import { MOTOR_PART, THREE_CONDEMNED } from '../../../flows/examples/second.ts';
import { TERMINALS } from '../../../flows/examples/three.ts';

/** Ways of the pages that neither the proof's walk nor a worked call goes; `read.ts` says how rows are read. */
/** The indoor unit dead once more, after live readings in it. */
const INDOOR_AGAIN = 'yes | clean, 1 cap, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 / 9.3';
const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';
/** The lines of a worked call between two of them, so many from its beginning and from its end. */
const between = (lines: readonly string[] = [], from: number, end: number): string =>
  lines.slice(from, end).join(' | ');
const TO_OUTWARD = between(FUSE_SHORT[1]?.lines, 2, -1);
const INDOORS = between(FUSE_SHORT[1]?.lines, 3, -1);
const NO_FAN = BLOWER_LIVE.find(({ title }) => title.includes('no fan call and no call to cool'))?.lines ?? [];
const TO_DOOR = between(NO_FAN, 2, NO_FAN.indexOf('0') + 1);
const TO_TERMINALS = between(TERMINALS[2]?.lines, 2, -1);
/** A box has no run capacitor to read. */
const BOX = 'walk-in | product 47 r134a hums trips';
const TO_BOX_TERMINALS = between(
  TERMINALS[2]?.lines.filter((line) => line !== 'wires off' && !line.startsWith('herm ')),
  2,
  -1,
);
const TWO = MOTOR_PART[1]?.lines ?? [];
const AFTER_HERM = between(TWO, TWO.indexOf('herm 36.1 case ol') + 1, TWO.indexOf('herm 4.96 case ol'));
const NEW_MOTOR = between(TWO, TWO.indexOf('herm 4.96 case ol') + 1, TWO.indexOf('still in'));
const OTHERS = THREE_CONDEMNED[0]?.lines ?? [];
const TO_THIRD = between(OTHERS, OTHERS.indexOf('herm 3.9 case ol') + 1, OTHERS.indexOf('herm 3.8 case ol'));
const AFTER_THIRD = between(OTHERS, OTHERS.indexOf('herm 3.8 case ol') + 1, OTHERS.length);

export const OTHER_WAYS = `
← cycling: Ice first
f
  no idea | psc | yes | pull-out, breaker, no other feed, two legs, outlet | yes | clean, 1 cap, 45+5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.6 0.1 0.5 / 9.3 | ${BLOCK} | no diagram → wires (nobody could tell what it does: the dead tests)
  no idea | psc | yes | pull-out, breaker, no other feed, two legs, outlet | yes | clean, 1 cap, 45+5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.6 0.1 0.5 / 9.3 | ${BLOCK} | no diagram | wires off | herm 44.6 fan 5.03 hf 4.52 case ol | spin free | cr .9 cs 2.7 sr 3.6 g ol | fan 14 31 45 frame ol → ready as capacitor-good (both motors, then the supply, before any start)

← silent: A leak alarm is left alone
leak alarm
  not sure | leak alarm → !raised as alarm-or-lockout (unsure, and then the alarm)
  not sure | float up → where (unsure, and then the float)
  not sure | breaker mid → fast (unsure, and then the breaker)
  on heat | not sure → fit (set, and nobody heard whether it runs)

← still-after: Nobody read the volts: no motor is condemned
all good
  not sure → observation as capacitor-good (a next round, nothing live)
  all good | heat pump | not sure → !raised as no-start-undecided (in defrost or not)

← motors: The fan binds: its motor and a new capacitor
240 239 comp 13.1 fan .9 split 19
  240 239 comp 13.1 fan 0 | all good | fan | 239 → !raised as no-start-undecided (the new motor stands on volts, and what was read was of the old one)

← breaker: The load is above its rating
trips after a while
  not sure → !raised as breaker-not-measured (what the start did)

← runs-on: Ice first
ice
  not sure → coil (whether the blower runs)

← chatter: Enough volts and it buzzes: the contactor
buzzes
  not sure → line (enough volts, and nobody heard whether it buzzes: the dead tests)

← blower-capacitor: Two terminals, the print unreadable: shorted by ohms alone
0.2 ohm
  ol → spin as rating-unknown (no rating, and not shorted)
  15k → spin as rating-unknown (no rating, and ohms that stand)

← contactor-after: A pole drops too much under load, its contact good when dead: a new contactor, proven
contactor fitted
  skip none on the truck → !left as no-part (left out)

← contactor-after: A pole drops too much under load, its contact good when dead: a new contactor, proven
wires back
  skip nothing on record → !left as wiring-not-known (left out)

← three-windings: Pairs that differ twice condemn nothing
239 241 240 comp 13.1 13.2 12.9 fan .9 split 19
  239 241 240 t1t2 230 comp 13.1 13.2 12.9 fan .9 split 19 | .1 2.4 .1 → locked as contact-drop (a pole of three that drops)

← contactor-after: A pole drops too much under load, its contact good when dead: a new contactor, proven
241 236 comp 13.1 fan .9 split 19
  241 236 comp 0 fan .3 | 2.4 .1 → !raised as poles-undecided (too few amps to load a pole)

← coil-live: A package unit, enough volts and it stays out: its contactor, dead again
left alone
  left alone | begin 25.6 coil 29, prints 24, pulls in → !raised as coil-volts-too-high (more than a coil of its print has)
  left alone | skip no room → !raised as control-undecided (nothing read)
  left alone | begin 12 coil 0, prints 24, stays out → !raised as no-call-in-this-cabinet (a part of the volts comes in)
  left alone | begin 25.6 coil 4, prints 24, stays out → across-live (hardly any volts left at the coil)
  left alone | begin 21 coil 4, prints 24, stays out | delay .1 lp 12 → !raised as control-undecided (a part of the volts across a switch)
  left alone | begin 21 coil 4, prints 24, stays out | delay .1 lp .1 → locked (a part of the volts, every switch closed: make-dead, then the wire)
  left alone | begin 20.3 coil 20.2, prints 240, stays out → !raised as control-undecided (ghost volts at a coil on the line)
  just now | begin 25.6 coil 0, prints 24, stays out | not sure → call (whether the five minutes were over)

← coil-live: The delay stays open past its time
delay 25.6
  delay .1 lp .1 hp .1 discharge 25.6 → !raised as discharge-thermostat-open (the last one)
  delay .1 lp .1 hp 25.6 | not sure → !raised as high-pressure-not-looked-into (coil and fan not seen)
  delay .1 lp .1 hp 25.6 | fan slow → !raised as high-pressure-not-the-fan (its dead tests were good)
  delay .1 lp .1 hp 25.6 | clean → !raised as high-pressure-unexplained (a clean coil)

← blower-restart: It does not start
volts 240 blower 0
  volts 240 blower 3.6 split 9 → off as capacitor-good (the split is short)
  volts 240 blower 3.6 | split 18 → !done as blower-runs-nothing-found (the split some minutes later)
  volts 240 blower 3.6 | skip no thermometer → !raised as blower-not-proven (the split not read)

← chatter: Enough volts and it buzzes: the contactor
coil 23.1
  coil 5.2 rc 25.6 | chatters | lp .1 hp .1 → mended (hardly any volts, every switch closed)
  coil 5.2 rc 25.6 | chatters | delay 20.4 → !raised as chatter-undecided (hardly any volts, the delay open)
  coil 5.2 rc 25.6 | chatters | lp 20.4 → !raised as chatter-undecided (hardly any volts, a switch open)
  coil 5.2 rc 25.6 | chatters | hp 20.4 → !raised as chatter-undecided (hardly any volts, another one open)
  coil 5.2 rc 25.6 | chatters | discharge 20.4 → !raised as chatter-undecided (hardly any volts, the last one open)
  coil 18.2 | chatters → door (low, the source not read)
  coil 18.2 rc 19 | chatters → door (low at the source)
  coil 0 | quiet → door (no volts at all)

← runs-on: No volts at the coil and closed: welded
contacts 0.1 0.1
  contacts 5 5 → !raised as runs-on-undecided (neither closed nor open)

← contactor-dead: Volts at the coil, coil right, not in: jammed
y-c 25.6 coil 25.4
  y-c 20.2 coil 20.1 | stays out → door (under what it needs to pull in)
  y-c 31 coil 30.8 → !raised as control-volts-foreign (more than the circuit has)
  y-c 29.5 coil 29.4 | stays out → !raised as control-undecided (more than a coil takes, and its own)

← make-dead: None to be found on a unit that needs one: hands out, a senior decides
psc
  ecm | yes | pull-out, breaker, no other feed, two legs, outlet | yes | clean, 0 caps → look (an electronic fan, and its compressor needs one)
  three-phase | yes | breaker, no other feed, three lines, outlet | yes | clean, 0 caps → proving (three lines need none)
  walk-in | product 47 hours 3 r404a hums trips | yes | breaker, heater, two legs, outlet | yes | clean, 0 caps | 121 / 0 0 0 / 0 0 / 0 0 0 / 121 | contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1 → spin (a walk-in without a capacitor)

← whose-hum: A growl: the dead tests, and a weak capacitor
growls
  not sure → fit (anything unsure counts as the compressor)
  contactor → blinks (a faint hum of its contactor)

← fan-rests: A low-ambient control stopped it, and it starts again
it cools
  it doesnt → looked as fan-stood-and-not-cold (the fan explained, and not cold)

← phase-monitor: It shows a fault, and the lines read right: it stays in, and a senior leads on
230 231 229
  230 224 227 → !raised as phase-monitor-holds-off (apart by more than 2 %: it may hold off for that)
  462 463 455 | 460 → !raised as phase-monitor-holds-off (another nameplate)
  462 463 455 | 230 | idle unit 462 feed 463 → !raised as supply-out (too much for its nameplate)

← another-capacitor: A run capacitor of its own for the fan, good
clean, 2 caps, 45+5 6% 440
  clean, 3 caps, 45+5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0 0 0 / 0 0 / 9.3 | ${BLOCK} | no diagram | wires off | herm 44.6 fan 5.03 hf 4.52 case ol | run | off | 5 µF 6% 370 | herm 4.96 case ol → kind as capacitor-good (three capacitors)

← refrigeration: Start capacitor alone, the external overload open
start only
  run only → asked-for as external-overload-open (a run capacitor alone)

← dual-capacitor-readings: The case not taken
skip rim under paint
  case ol → spin as capacitor-good (the case a little later)
  case 0.4 M → sections (the case a little later, and low)

← single-capacitor-readings: One section, open on leads that read
herm ol
  herm 11k → leads (neither shorted nor open)
  herm ol | no → spin as value-undecided (the leads don’t read)
  herm ol | not sure → spin as value-undecided (nobody knows whether the leads read)

← single-capacitor-readings: One section, good
herm 39.4 case ol
  herm 39.4 | case ol → spin as capacitor-good (the case a little later)
  herm 39.4 | skip rim under paint → spin as case-undecided (the case not read)
  herm 37.0 case ol → sections (outside, and the doubt reaches in)

← refrigeration: The external overload open on a hot shell: it cools and reads again, and why it got hot is not known
start 201 bleed 15k contacts ol coil 0.6 upright
  start 120 bleed 15k contacts ol coil 0.6 upright | start 120 bleed 15k contacts ol coil 0.6 upright | spin free | cr 1.4 cs 4.6 sr 6.0 g ol → why as start-capacitor-fails (a start capacitor that fails while the overload cools)
  start 201 bleed 15k contacts .1 coil .6 lying | spin free | cr 1.4 cs 4.6 sr 6.0 g ol → !raised as start-relay-undecided (a relay nobody can judge, while the overload cools)

← refrigeration: The external overload open on a hot shell: it cools and reads again, and why it got hot is not known
start only
  run only | no diagram | wires off | 25 6% 440 | ol case ol | all checked | ol case ol | cant | spin free | cr 1.4 cs 4.6 sr 6.0 g ol → !raised as value-undecided (a run capacitor whose value stays open, while the overload cools)

← supply: One leg and neutral, and hot to ground reads nothing, also on bare metal
hn 119 hg 0 ng 0
  hn 119 hg 0 ng 0 | hn 119 hg 121 ng 9 → !left as neutral-not-sound (its ground found on bare metal, and volts on the neutral)

← restart: The contactor is out five minutes after the call: its control comes next, and no pole
left alone
  just now | left alone, stays out → observation as contactor-not-in (five minutes waited out, by the record)
  out | left alone, stays out → observation as contactor-not-in (out at once, and five minutes later)

← fan-windings: A fan on three lines: three equal pairs are right
fan 14 14 14 frame ol
  fan 14 14 14 frame 3 M → ready as fan-windings-undecided (three equal pairs, its frame neither low nor clear)
  fan 14 14 14 frame 900 → split as low-to-ground (three equal pairs, low to its frame)
  fan ol ol ol frame ol | hot → plate as fan-protector-open (all three open on a hot motor)
  fan 14 14 90 frame ol → pairs (neither equal nor a sum, once)

← fan-windings: A fan on three lines, open on a cool motor: the new one has no capacitor
no capacitor
  yes → rating (the new motor prints µF)
  not sure → rating (its plate not read: asked again)

← dead-block: Fuses, contactor and ground not taken; nothing found
psc
  walk-in | product 47 hours 3 r404a hums trips | yes | breaker, heater, two legs, outlet | yes | clean, 0 caps | 121 / 0 0 0 / 0 0 / 0 0 0 / 121 | contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1 | stiff | cr .9 cs 2.7 sr 3.6 g ol | nothing | motor fitted → asks as fan-bearings (a fan of a walk-in: its plate says whether it has a capacitor)

← three-windings: All three open on a hot shell: its protector
hot
  cool → pairs as winding-open-at-harness (open on a cool motor)

← under-load: Inside its label under load
herm 6.1 across 360
  herm 5.8 across 360 → plate as section-good-under-load (its limit inside the doubt)
  herm 8.2 across 360 → second as value-undecided (above the label)
  herm 8.2 across 360 | herm 8.2 across 360 → why as section-fails-under-load (above the label twice)
  herm 5.6 across 360 → second as value-undecided (outside, and the doubt reaches in)
  herm 5.6 across 360 | herm 6.1 across 360 → plate as section-good-under-load (once outside, then in)
  herm 5.6 across 360 | herm 5.8 across 360 → plate as section-good-under-load (once outside, then near)
  herm 5.6 across 360 | herm 5.6 across 360 → why as section-fails-under-load (near outside twice)
  herm 5.6 across 360 | herm 8.2 across 360 → !raised as value-left-open (one low, one high)

← indoor-source: A blown board fuse and no short: no new fuse
fuse ol sec 1.2 y-c 12
  fuse ol sec 1.2 y-c ol → !raised as board-fuse-without-cause (no coil to be read)
  fuse ol sec ol y-c 1.5 → locked (a short, and the secondary open)

← inverter: A blown fuse: never just a new one
0.8 0.8 0.8 ol
  ol ol ol ol → sensors as inverter-fuse-blown (all three open)

← three-windings: 460 V: the plate is asked before the line is judged
462 463 455
  cant | 17.9 96 1.2 | closed | 462 463 455 comp 8.1 8.2 8.0 fan .9 | 460 → later as supply-not-read (the plate at the restart)

← restart: Within its figures, the split a quarter of an hour later
split 19
  skip no thermometer → !raised as restart-not-proven (the split not read)

← round: Out of scope: noted, and whom it belongs to
code 12, nothing opened
  skip nothing to say → !raised as out-of-scope (nothing to note)


← start-potential-relay: The start capacitor is low
start 120 bleed 15k contacts .1 coil 8k
  start 240 uf bleed 15k contacts .1 coil 8k → readings as capacitor-good (above its range: once)
  start 240 uf bleed 15k contacts .1 coil 8k | start 240 uf bleed 15k contacts .1 coil 8k → spin as start-capacitor-reads-high (above its range, twice)
  start .2 bleed 15k contacts .1 coil 8k → leads as capacitor-good (next to nothing, the leads not looked at)
  start .2 bleed 15k contacts .1 coil 8k | yes → spin as start-capacitor-fails (next to nothing on leads that read)
  start .2 bleed 15k contacts .1 coil 8k | no → spin as start-capacitor-undecided (leads that read nothing)
  start .2 bleed 15k contacts .1 coil 8k | not sure → spin as start-capacitor-undecided (nobody knows whether the leads read)

← start-current-relay: The contacts are closed at rest
start 175 bleed 15k contacts .1 coil .3 upright
  start 240 uf bleed 15k contacts ol coil .3 upright → readings as capacitor-good (above its range: once)
  start 240 uf bleed 15k contacts ol coil .3 upright | start 240 uf bleed 15k contacts ol coil .3 upright → spin as start-capacitor-reads-high (above its range, twice)
  start .2 bleed 15k contacts ol coil .3 upright → leads as capacitor-good (next to nothing, the leads not looked at)
  start .2 bleed 15k contacts ol coil .3 upright | yes → spin as start-capacitor-fails (next to nothing on leads that read)
  start .2 bleed 15k contacts ol coil .3 upright | no → spin as start-capacitor-undecided (leads that read nothing)
  start .2 bleed 15k contacts ol coil .3 upright | not sure → spin as start-capacitor-undecided (nobody knows whether the leads read)

← start-ptc: The PTC is open
start 175 bleed 15k ptc ol
  start 240 uf bleed 15k ptc 8 → readings as capacitor-good (above its range: once)
  start 240 uf bleed 15k ptc 8 | start 240 uf bleed 15k ptc 8 → spin as start-capacitor-reads-high (above its range, twice)
  start .2 bleed 15k ptc 8 → leads as capacitor-good (next to nothing, the leads not looked at)
  start .2 bleed 15k ptc 8 | yes → spin as start-capacitor-fails (next to nothing on leads that read)
  start .2 bleed 15k ptc 8 | no → spin as start-capacitor-undecided (leads that read nothing)
  start .2 bleed 15k ptc 8 | not sure → spin as start-capacitor-undecided (nobody knows whether the leads read)

← dual-capacitor-readings: Both sections good
herm 44.6 fan 5.03 hf 4.52 case ol
  herm 45.0 fan 5.00 hf 4.50 case ol → exact (both readings equal the label)
  herm 45.0 fan 5.00 hf 4.50 case ol | yes → spin as capacitor-good (both readings equal the label, read off the meter)

← another-capacitor: The start capacitor’s disc popped, the run capacitor beside it good
the other one
  this one → this-one as condemned-by-sight (on the run capacitor)

← refrigeration: Start capacitor alone, the external overload open
clean, 1 cap, two terminals
  disc popped, 1 cap, two terminals | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.2 / 9.3 | contacts .1 .1 coil 12.6 t1g ol t2g ol overload 0.1 | start only → spin as start-capacitor-by-sight (a start capacitor alone, its disc popped)

← refrigeration: Nobody can read which refrigerant it is: it counts as one that burns
unreadable
  skip no light on it → !raised as refrigerant-may-burn (the plate not looked at)
  r404a → fit (a refrigerant that doesn’t burn)

← blower-capacitor: Condemned by sight
bulged, 1 cap, 7.5 6% 440
  bulged, 2 caps, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 0 / 9.3 | fuse 0.1 leads ol | wires off | this one → spin as condemned-by-sight (two capacitors, the blower’s bulged)
  bulged, 2 caps, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 0 / 9.3 | fuse 0.1 leads ol | wires off | not sure → sections (two capacitors, and on which it is nobody says)

← fuse-short: The board’s fuse blown, and Y to C outward reads the coil: no new fuse
psc
  ecm | ${TO_OUTWARD} → outward (an electronic fan outdoors: the short is sought there as well)
  three phase | no monitor | ${TO_OUTWARD} → outward (three lines outdoors)

← blower-live: Silent, the blower still too, no fan call and no call to cool: the thermostat or its cable
psc
  ecm | ${TO_DOOR} → door (an electronic fan outdoors: the source of the 24 V)
  three phase | no monitor | ${TO_DOOR} → door (three lines outdoors)

← compressor-terminals: Open at its own terminals, cold: a senior confirms
psc
  ecm | ${TO_TERMINALS} → pairs-again (an electronic fan: the compressor’s terminals are the same)
  ${BOX} | ${TO_BOX_TERMINALS} → pairs-again (a box: the compressor’s terminals are the same)

← fan-windings: A fan on three lines: three equal pairs are right
spin free
  stiff → pairs as fan-bearings (a fan on three lines, stiff: its bearings)

← trips: A breaker tripped, and a weak capacitor: the insulation before any power, then one controlled start
herm 36.1 fan 5.02 hf 4.4 case ol
  cant | herm ol fan ol | spin free | cr .9 cs 2.7 sr 3.6 g ol | fan 14 31 45 frame ol | ready, reciprocating, 500 | 120 | 9.3 / 0.4 / 9.3 → qualified as value-undecided (its value stays open: read under load, after the insulation)

← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
off now
  off 5 minutes | 219 comp 94 → !raised as no-start-undecided (with the assist right after it was off, whatever is said)

← new-motor-part: Two singles, HERM’s condemned as well: the fan’s goes by the motor’s plate, HERM’s by its own print
herm 36.1 case ol
  herm 45.2 case ol | ${AFTER_HERM} | herm 3.9 case ol | ${NEW_MOTOR} | still in → rating (the fan’s own condemned, and said to be still in: a part for it)

← repair: The second and the third are weak: one print is kept of them, so a senior says which part goes where
herm 3.9 case ol
  herm 4.96 case ol | ${TO_THIRD} | herm 3.8 case ol | ${AFTER_THIRD} → rating (the third alone is weak)

← indoor-source: A blown board fuse and no short: no new fuse
fuse ol sec 1.2 y-c 12
  fuse ol sec 1.2 pri ol y-c 12 → !raised as board-fuse-without-cause (its primary open as well)

← indoor-source: No 24 V and the primary left out: asked in the same sitting, and its winding open, dead
239
  150 | ${INDOOR_AGAIN} | fuse 0.1 sec 1.2 pri ol y-c 12 → !raised as transformer-primary-not-read (volts of no supply)

← refrigeration: The external overload open on a hot shell: it cools and reads again, and why it got hot is not known
contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol
  fuses ol .1 contacts .1 .1 coil 12.6 t1g ol t2g ol overload ol | hot | start only | current | resistor one end off | 189-227 MFD 330 VAC | start 201 bleed 15k contacts ol coil 0.6 upright | spin free | cr 1.4 cs 4.6 sr 6.0 g ol → setup (a fuse blown beside it: the insulation first)

← fuse-short: The board’s fuse blown, and Y to C outward reads the coil: no new fuse
a
  d | walk-in | product 47 r404a defrost | runs | 9.6 56 1.0 | closed | 239 238 comp 7.1 fan .9 box 47 noise | off | i | ${INDOORS} → outward (a box, in a second round)

← printed-coil: It cycles, and its coil is on line volts: read live after the dead tests, the low-pressure switch
cr .9 cs 2.7 sr 3.6 g ol
  cr ol cs ol sr 3.6 g ol | hot | fan 14 31 45 frame ol | 240v → plate as control-not-apart (an overload open on heat: no supply read on it)
`;
