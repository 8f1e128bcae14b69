/**
 * What does not suffice condemns nothing: each row takes away from the line that carries a verdict, and the verdict must
 * not come. Why each is weak: common practice, no single source. `read.ts` says how rows are read.
 */
const DEAD = '121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.6 0.1 0.5 / 9.3';
const THREE =
  'yes | breaker, no other feed, three lines, outlet | yes | clean, 0 caps | 121 / 0 0 0 0 0 0 / 0 0 0 / 121';
const INDOOR =
  'yes | breaker, no other feed, two legs, outlet | yes | clean, 1 cap, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 / 9.3';
/** The indoor unit dead once more, after live readings in it. */
const INDOOR_AGAIN = 'yes | clean, 1 cap, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 / 9.3';
/** Probes placed at the indoor board, the call five minutes old. */
const PLACED = `doors on | qualified | psc | ${INDOOR} | placed | left alone`;
const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';

export const CAPACITORS = `
section-fails-value ← dual-capacitor-readings: HERM at 36.1 of 45 µF ±6 %
herm 36.1 fan 5.02 hf 4.4 case ol
  herm 44.6 fan 4.52 case ol → third (FAN reads what HERM and FAN in series would)
  herm 42.0 fan 5.02 hf 4.48 case ol → sections (outside, and the meter’s doubt reaches in: once)

section-fails-value ← dual-capacitor-readings: HERM at 36.1 of 45 µF ±6 %
wires off herm fan c
  they don’t come off → spin as wires-stuck (the wires are on)

section-fails-value ← dual-capacitor-readings: HERM at 36.1 of 45 µF ±6 %
clean, 1 cap, 45+5 6% 440
  clean, 1 cap, 45+5 10% 440 | ${DEAD} | ${BLOCK} | no diagram | wires off | herm 41.8 fan 5.02 hf 4.48 case ol → spin as capacitor-good (out by a habit of 6 %, inside the 10 % of its own label)

section-fails-value ← single-capacitor-readings: One section, weak
herm 30 case ol
  herm ol case ol → wires (OL in µF)

section-fails-value ← blower: The blower’s capacitor is weak: replaced and proven
cap 5.9 case ol
  cap 7.0 case ol → sections (a blower’s capacitor outside, and the doubt reaches in: once)

section-open ← dual-capacitor-readings: FAN open, with the wires seen to
herm 44.6 fan .02 hf .02 case ol
  herm 44.6 fan ol case ol → wires (OL in µF, which open and shorted parts both read)
  herm 44.6 fan .02 hf .02 case ol → wires (once, before the wires were looked at)

section-shorted ← dual-capacitor-readings: HERM shorted: OL in µF, near zero in ohms
herm ol fan 5.03 case ol
  herm ol fan 5.03 case ol → wires (OL in µF alone)

section-shorted ← dual-capacitor-readings: HERM shorted: OL in µF, near zero in ohms
herm 0.3 ohm fan ol
  herm 11k ohm fan ol → spin as value-undecided (ohms that are not near zero)

condemned-by-sight ← run-capacitor: A bulged top condemns it by sight
bulged, 1 cap, 45+5 6% 440
  rusty, 1 cap, 45+5 6% 440 | ${DEAD} | ${BLOCK} | no diagram | wires off → sections (rust, dirt, age)

leak-to-case ← dual-capacitor-readings: Low to the case twice
herm 44.6 fan 5.03 hf 4.52 case 0.4 M
  herm 44.6 fan 5.03 hf 4.52 case 5 M → sections (1 to 20 MΩ, once)
  herm 44.6 fan 5.03 hf 4.52 case 0.4 M → sections (low, once)
  herm 44.6 fan 5.03 hf 4.52 case 0.4 M | herm 44.6 fan 5.03 hf 4.52 case 60 M → spin as capacitor-good (low once, clear once it was wiped dry)

capacitor-good ← dual-capacitor-readings: Both sections good
herm 44.6 fan 5.03 hf 4.52 case ol
  herm 44.6 case ol → sections (one section only)
  herm 44.6 fan 5.03 hf 4.52 → case (its case not read)

section-too-high ← dual-capacitor-readings: Above the label twice
herm 49.8 fan 5.03 hf 4.57 case ol
  herm 49.8 fan 5.03 hf 4.57 case ol → sections (once)

wrong-part-fitted ← repair: The wrong part was in: the diagram decides
35+5 370
  no diagram | wires off | herm 49.8 fan 5.03 hf 4.57 case ol | herm 49.8 fan 5.03 hf 4.57 case ol | spin free | cr .9 cs 2.7 sr 3.6 g ol | nothing → part as section-too-high (a high reading alone)

wrong-part-fitted ← dual-capacitor-readings: Good by its own print, and the diagram asks for another: the wrong part is in
35+5 440
  no diagram | wires off | herm 44.6 fan 5.03 hf 4.52 case ol → spin as capacitor-good (nobody could read the diagram)
  45+5 370 | wires off | herm 44.6 fan 5.03 hf 4.52 case ol → spin as capacitor-good (more volts than the diagram asks for)
  35+5 440 | wires off | skip no capacitance range | herm ol fan ol → spin as value-undecided (its own value not read)
  35+5 440 | wires off | herm 44.6 fan 5.03 hf 4.52 | skip rim under paint → spin as case-undecided (its case not read)

wrong-part-fitted ← under-load: Inside its own label under load, and the diagram asks for another: the wrong part is in
35+5 440
  no diagram | wires off | skip no capacitance range | herm ol fan ol | spin free | cr .9 cs 2.7 sr 3.6 g ol | yes | herm 6.1 across 360 → plate as section-good-under-load (nobody could read the diagram)

fan-was-meant-to-stand ← fan-rests: In defrost, watched to its end: the fan was meant to stand
started again
  stands still → fit (it doesn’t start again)
  cant watch → unwatched (nobody watched it)
  cant watch | dead tests → fit (nobody watched it, so it is tested)

fan-was-meant-to-stand ← fan-rests: In defrost, watched to its end: the fan was meant to stand
steam
  neither → fit (straight cooling in the heat)
  not sure → fit (nobody can say)

phase-monitor-holds-off ← phase-monitor: It shows a fault, and the lines read right: it stays in, and a senior leads on
fault
  good → times (its light shows good)
  cant see it → times (not to be seen from outside)
  dark | qualified | ${THREE} | placed | 230 118 113 → !raised as single-phasing (dark, and a line is missing)

phase-monitor-holds-off ← phase-monitor: It shows a fault, and the lines read right: it stays in, and a senior leads on
230 231 229
  skip no meter → !raised as phase-monitor-not-explained (the lines not read)

external-overload-open ← refrigeration: Start capacitor alone, the external overload open
product 47 r134a hums trips
  product 47 hums trips → plate (dead tests with the refrigerant left out)
  product 47 other hums trips | other → !raised as refrigerant-may-burn (dead tests beside a refrigerant that nobody knows)
  product 47 hums trips | skip no plate → !raised as refrigerant-may-burn (dead tests with the plate unread)

external-overload-open ← refrigeration: Start capacitor alone, the external overload open
cold
  hot → gear as external-overload-has-to-cool (open on a hot shell: it did its work)
  not sure → gear as external-overload-has-to-cool (how hot it is nobody knows)

bleed-resistor-open ← start-potential-relay: The bleed resistor is open
start 175 bleed ol contacts .1 coil 8k
  start 175 bleed 15k contacts .1 coil 8k → spin as capacitor-good (15 kΩ across: that is the resistor)

condemned-by-sight ← another-capacitor: The fan’s own run capacitor bulged, the first one good
yes run
  no → kind as capacitor-good (bulged, and on which of them nobody says)

start-capacitor-by-sight ← another-capacitor: The start capacitor’s disc popped, the run capacitor beside it good
yes start
  not sure → kind as capacitor-good (a popped disc, and on which of them nobody says)

start-capacitor-by-sight ← another-capacitor: The start capacitor’s disc popped, the run capacitor beside it good
disc popped, 2 caps, 45+5 6% 440
  rusty, 2 caps, 45+5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0 0 0 / 0 / 9.3 | ${BLOCK} | no diagram | wires off | herm 44.6 fan 5.03 hf 4.52 case ol → kind as capacitor-good (rust, dirt, age)

start-capacitor-fails ← start-potential-relay: The start capacitor is low
start 120 bleed 15k contacts .1 coil 8k
  start 240 uf bleed 15k contacts .1 coil 8k | start 240 uf bleed 15k contacts .1 coil 8k → spin as start-capacitor-reads-high (above its range, twice)
  start 158 bleed 15k contacts .1 coil 8k → readings (under its range, and the doubt reaches in: once)
`;

export const CONTROL = `
contactor-coil-open ← contactor-dead: Its coil reads OL
y-c 25.6 coil 25.4
  y-c 25.6 coil 0 → across-24 (0 V at the coil)

contactor-coil-shorted ← contactor-dead: Its coil is shorted
contacts .1 .1 coil 2.1
  contacts .1 .1 coil 6.2 | contacts .1 .1 coil 6.2 → !raised as contactor-undecided (ohms between the bands, twice)
  contacts .1 .1 coil 2.1 | contacts .1 .1 coil 12.4 → why as contactor-jammed (once, and good on bright metal)
  contacts .1 .1 coil 2.1 | cant → !raised as contactor-undecided (once)

contactor-contacts ← contactor-dead: Its contacts are done
contacts 3.4 .1 coil 12.4
  contacts 0.5 .1 coil 12.4 → why as contactor-jammed (pressed in and under 1 Ω, whatever they look like)
  contacts 3.4 .1 coil 12.4 | contacts .1 .1 coil 12.4 → why as contactor-jammed (once, pressed in halfway)

contactor-contacts ← dead-block: A contact reads high with the armature pressed in
fuses 0.1 0.1 contacts .1 3.2 coil 12.6 t1g ol t2g ol
  fuses 0.1 0.1 contacts .1 .4 coil 12.6 t1g ol t2g ol → asked-for (pressed in and under 1 Ω, whatever they look like)

contactor-jammed ← contactor-dead: Volts at the coil, coil right, not in: jammed
y-c 25.6 coil 25.4
  y-c 25.6 coil 19 → across-24 (not in, with less than pull-in volts)

contactor-welded ← runs-on: No volts at the coil and closed: welded
contacts 0.1 0.1
  contacts ol ol → !raised as runs-on-undecided (no volts, and the contacts let go)

transformer-open ← indoor-source: An open transformer behind an electronic blower that rested
calling
  blank → door (a dark thermostat)

transformer-open ← indoor-source: An open transformer behind an electronic blower that rested
fuse 0.1 sec ol y-c 12
  fuse ol sec ol y-c 12 → !raised as board-fuse-without-cause (with its fuse open)
  fuse 4 sec ol y-c 12 → !raised as control-source-undecided (a fuse between good and blown)

transformer-open ← indoor-source: An open transformer behind an electronic blower that rested
r-c 0 y-c 0 primary 240
  r-c 0 y-c 0 | cant | off now | rested | ${INDOOR_AGAIN} | fuse 0.1 sec ol y-c 12 → !raised as transformer-primary-not-read (its primary not read)
  r-c 0 y-c 0 primary 150 | off now | rested | ${INDOOR_AGAIN} | fuse 0.1 sec ol y-c 12 → !raised as transformer-primary-not-read (a primary outside every supply)

control-short-found ← short-outdoors: A blown board fuse, the short in the outdoor unit: found, under its own lock, before the new one
fuse ol sec 1.2 y-c 1.5
  fuse ol sec 1.2 y-c 12 → !raised as board-fuse-without-cause (a blown fuse alone)

control-short-found ← short-outdoors: A blown board fuse, the short in the outdoor unit: found, under its own lock, before the new one
1.4
  ol | 12 → !raised as board-fuse-short-not-located (a short that neither end shows)

transformer-overloaded ← indoor-source: More load than its VA
r-c 20 y-c 0 primary 240 load amps 2.5 a, 40 va
  r-c 20 y-c 0 primary 240 load amps 1.2 a, 40 va → !raised as control-volts-low (low under a load that it can carry)
  r-c 26 y-c 12 primary 240 → !raised as control-source-undecided (volts that are in their band)

low-pressure-open ← control: The low-pressure switch: certified
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

high-pressure-unexplained ← control: The high-pressure switch with a clean coil: certified
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

discharge-thermostat-open ← control: The discharge thermostat: it ran too hot
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

control-volts-dropped ← control: Volts lost on the way to the coil: the switch that takes them, and it waits for the part
y-c 25.6 coil 19
  y-c 25.6 coil 25.1 → pulled (half a volt lost, and enough at the coil)
  y-c 26.6 coil 24.6 → pulled (two volts lost, and enough at the coil)
  y-c 25.6 coil 20.4 → pulled (just enough at the coil)

control-volts-dropped ← control: Volts lost on the way to the coil: the switch that takes them, and it waits for the part
delay .1 lp 6.4
  delay .1 lp .4 → wire (every switch closed)
  delay .1 lp 25.6 → !raised as control-undecided (an open switch with volts behind it)
  skip no room → !raised as control-undecided (what takes them not read)

coil-volts-dropped ← chatter: The source holds and the coil gets too little: the switch that takes the volts
coil 18.2 rc 24.9
  coil 20.4 rc 24.9 | chatters → line (enough at the coil)

coil-volts-dropped ← chatter: The source holds and the coil gets too little: the switch that takes the volts
delay .1 lp 6.3
  delay .1 lp .1 | not found → !raised as chatter-undecided (every switch closed)
  delay .1 lp 25.6 → !raised as chatter-undecided (an open switch with volts behind it)
  skip no room → !raised as chatter-undecided (what takes them not read)

control-wire-open ← control: Every switch closed, no volts at the coil: a wire, mended
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V at its end, within five minutes of a change of call)

no-call-outdoors ← indoor-source: The call doesn’t leave the thermostat
left alone
  changed just now | y-c 0 coil 0 → waited (0 V within five minutes of a change of call)

low-pressure-open ← control: The low-pressure switch: certified
delay .1 lp 25.5
  delay .1 lp 12 → !raised as control-undecided (a part of the volts across it)
  delay .1 lp .1 hp 25.6 → high-pressure (the volts across another switch)

high-pressure-open ← control: The high-pressure switch, tripped on a matted coil
left alone
  changed just now | y-c 0 coil 0 → waited (0 V within the delay)

low-pressure-open ← cycling: Dead tests good, then who drops it: the low-pressure switch
24
  240v → ready as control-not-apart (read along a coil on line volts)
  package → ready as control-not-apart (read where the transformer is in the same cabinet)
  not sure → ready as control-not-apart (read before anybody knows what the coil is on)

control-wire-open ← control: Every switch closed, no volts at the coil: a wire, mended
delay .1 lp .1 hp .1
  delay .1 lp .1 hp 6 → !raised as control-undecided (a switch that did not read closed)

delay-stays-open ← control: The delay stays open long past its time
left alone
  changed just now | y-c 25.6 coil 0 → waited (open within its time)

blower-proven ← blower: The float is up: drain cleared, the blower proven
works
  runs on → !left as float-does-not-open (a drain cleared under a float that does not open)

blower-proven ← blower: The float is up: drain cleared, the blower proven
volts 240 blower 3.6 split 18
  volts 240 blower 0 → off as drain-cleared (a drain cleared, and the blower stands)

thermostat-or-its-cable ← indoor-source: The call doesn’t leave the thermostat
r-c 26.1 y-c 0 float 0.1
  r-c 26.1 y-c 26 → locked (the call at both ends of the indoor unit)

thermostat-or-its-cable ← indoor-source: The call doesn’t leave the thermostat
r-c 26.1 y-c 0 float 0.1
  r-c 26.1 y-c 0 → has-float (a float that nobody read)
  r-c 26.1 y-c 0 | not sure → !raised as call-held-undecided (whether there is a float)
  r-c 26.1 y-c 0 | there | 25.8 → where as float-switch-open (volts across the float)
  r-c 26.1 y-c 0 | there | 12 → !raised as call-held-undecided (a part of the volts across the float)

thermostat-or-its-cable ← indoor-source: The call doesn’t leave the thermostat
y-c 0 coil 0
  y-c 25.6 coil 0 → across-24 (the call that arrives outdoors)

thermostat-or-its-cable ← indoor-source: A blank thermostat, the call left alone: none leaves it
left alone
  just now | not sure | r-c 26.1 y-c 0 → !raised as call-read-too-early (0 V within five minutes of a change of call)

transformer-open ← indoor-source: An open transformer behind an electronic blower that rested
fuse 0.1 sec ol y-c 12
  fuse 0.1 sec ol y-c 1.5 → !raised as control-short-behind-a-good-fuse (a short outward comes first)

control-short-found ← fuse-short: Silent, the blower still too, the board’s fuse blown: the short outdoors found, one new fuse, proven
1.5
  12 → !raised as board-fuse-without-cause (a blown fuse alone)
  ol → !raised as board-fuse-without-cause (nothing connected outward)
  skip no room → !raised as board-fuse-without-cause (nothing read outward)

fan-call-not-given ← blower-live: No fan call, and the call to cool is there: the thermostat or its G wire
r-c 26.1 y-c 26
  r-c 26.1 y-c 12 → !raised as control-source-undecided (the call to cool neither there nor gone)
  r-c 0 y-c 0 primary 0 → !raised as control-primary-absent (no 24 V at all)

board-blower-relay ← blower-live: Line and no tap: the board
238, 208/230
  0 → !raised as electronic-blower-not-fed (no line at its plug)

thermostat-cable-open ← indoor-source: The cable is open and is not mended today
calling
  blank | ${PLACED} | r-c 26.1 y-c 26 → !raised as call-not-read-outdoors (nothing read outdoors)

thermostat-cable-open ← indoor-source: The cable is open and is not mended today
y-c 0 coil 0
  y-c 12 coil 0 | ${PLACED} | r-c 26.1 y-c 26 → !raised as call-lost-between (some volts arrive outdoors)

thermostat-cable-shorted ← y-off: Y off at the board, dead: its own Y has no volts, so the thermostat or its cable calls
y is off
  not tried → !raised as call-not-located (its wires still on)

thermostat-cable-shorted ← y-off: Y off at the board, dead: its own Y has no volts, so the thermostat or its cable calls
0
  12 → !raised as call-not-located (a part of the volts on the bare Y)
`;

export const SUPPLY = `
supply-absent ← control: It pulls in with the line locked: dead tests, then the supply
0 0 0
  l1g 0 → line (a line to ground alone)

leg-lost ← supply: It hums, nothing turns, and a leg is lost
4 119 118
  238 119 3 → ground-again as capacitor-good (a line to ground alone, with volts between the lines)

neutral-not-sound ← supply: One leg and neutral, and volts on the neutral
hn 119 hg 121 ng 9
  hn 119 hg 121 ng 5 → plate as capacitor-good (no more on the neutral than a sound one has)

supply-out ← supply: It falls below its limit while it starts
236 118 118 min 188
  236 118 118 → plate as capacitor-good (one reading without load)
  236 118 118 min 188 → repeat as capacitor-good (one reading under load)

supply-out ← supply-located: It falls at the start, and a pole of the means loses it: located
starts rest 236 unit 187 poles 0.1 44
  starts rest 236 unit 187 → !raised as supply-not-located (read twice, and not located)
  idle unit 187 poles 0.1 44 → !raised as supply-not-located (poles read with nothing drawing)
  starts rest 236 unit 187 poles 0.1 4 → !raised as supply-not-located (a drop that doesn’t explain it)
  starts rest 236 unit 213 poles 0.1 44 → !raised as supply-not-located (it doesn’t repeat)

supply-unbalanced ← supply: Three-phase, the lines too far apart
230 206 230
  230 222 230 → plate as supply-unbalance-reported (between 2 and 5 %)

single-phasing ← supply: Three-phase, one line missing: off
208 104 104
  208 206 209 → plate (all three lines there)

fuse-blown ← dead-block: A blown fuse without a cause: it stays off
fuses 0.1 ol contacts .1 .1 coil 12.6 t1g ol t2g ol
  fuses 0.1 4 contacts .1 .1 coil 12.6 t1g ol t2g ol → asked-for (ohms between the bands)

breaker-weak ← breaker: Below its rating, and it drops volts: the breaker
trips after a while
  trips again → !raised as breaker-not-measured (it tripped twice)

breaker-weak ← breaker: Below its rating, and it drops volts: the breaker
load 22 drop 0.6
  load 22 drop 0.1 → which (below its rating, and no volts across it)
  load 44 drop 0.6 → !raised as load-above-the-breaker (a load above its rating)
`;

export const MOTORS = `
contactor-coil-open ← coil-live: A package unit, enough volts and it stays out: its contactor, dead again
begin 25.6 coil 25.1, prints 24, stays out
  begin 25.6 coil 20.3, prints 24, stays out → !raised as coil-volts-low (not in, with less than pull-in volts)
  begin 239 coil 203, prints 240, stays out → !raised as coil-volts-low (85 % of its own print, not of 24 V)
  begin 25.6 coil 25.1, prints 24, pulls in → plate as capacitor-good (it pulls in)

low-pressure-open ← coil-live: The low-pressure switch of a package unit: certified
left alone
  just now | begin 25.6 coil 0, prints 24, stays out → waited (0 V behind it, within five minutes of a change of call)
  not sure → !raised as control-not-read-live (nobody qualified, nothing read)

low-pressure-open ← coil-live: The low-pressure switch of a package unit: certified
delay .1 lp 25.5
  delay .1 lp 12 → !raised as control-undecided (a part of the volts across it)
  delay .1 lp 25.5 hp 25.5 → !raised as control-undecided (two at once)

no-call-in-this-cabinet ← coil-live: No call where its switches begin: its own source, and a senior
begin 0 coil 0, prints 24, stays out
  begin 25.6 coil 0, prints 24, stays out → across-live (a call where its switches begin)

contact-drop ← contactor-after: A pole drops too much under load, its contact good when dead: a new contactor, proven
2.4 .1
  120 120 → !raised as poles-undecided (the line’s volts across both: open, or never in)
  .7 .1 → !raised as drop-in-the-wiring (less than 1 V)

contact-drop ← contactor-after: A pole drops too much under load, its contact good when dead: a new contactor, proven
241 236 comp 13.1 fan .9 split 19
  241 0 comp 0 fan 0 → in-yet (nothing draws, and nobody knows whether it is in)
  241 236 comp 0 fan 0 → stands (nothing draws: no drop)

contactor-not-in ← restart: The contactor is out five minutes after the call: its control comes next, and no pole
left alone
  just now | stays out → off (out within five minutes of the call)
  just now | not sure → off (nobody could tell, within five minutes)
  not sure → off (nobody saw it)

fan-bearings ← motors: The fan binds: its motor and a new capacitor
stiff, scrapes
  spin free → pairs (it hums, and turns free)
  rubs → freed (a blade that touches something)
  wont turn → freed (a blade that may be held by something)
  no → freed (it does not spin free, and nobody said that the blade is clear)
  scrapes | cleared → pairs as fan-blade-cleared (free once it is clear of everything)

blower-bearings ← blower-tests: The wheel is stiff and clear of everything: a new motor and a new capacitor
stiff
  rubs → freed (a wheel that touches something)
  scrapes | cleared → speeds as blower-wheel-cleared (free once it is clear of everything)

fan-winding-open ← fan-windings: Open on a cool motor: the motor
cool
  hot → plate as fan-protector-open (open while hot)

fan-winding-open ← fan-windings: Open on a cool motor: the motor
fan 15 ol ol frame ol
  fan 15 33 90 frame ol | fan 15 33 90 frame ol → plate as fan-windings-undecided (a sum that does not fit)

fan-winding-open ← fan-windings: Open on a cool motor: the motor
psc
  ecm | neither → turns (an electronic fan: its windings are not asked)

fan-to-frame ← fan-windings: Low to its frame at the ends of its leads, alone, and past their run: the motor
900
  ol → wire as low-to-ground (low at the ends of its leads, clear past their run: the wire before the motor)
  cant → !raised as ground-not-located (low at the ends of its leads, and not read past them)

fan-to-frame ← fan-windings: Low to its frame at the ends of its leads, alone, and past their run: the motor
comp ol fan 900 heater ol cable ol
  comp ol fan ol heater ol cable ol → !raised as ground-gone (low with the other branches on it)

wire-chafed ← ground: The fan’s leads rub on the guard: low at their ends, clear past the run, mended
chafed
  nothing → !raised as ground-not-located (nothing to see)

blower-to-frame ← blower-windings: Low to the frame, also past the run of its leads: a new motor
400
  ol → !raised as blower-ground-not-located (clear past the run of its leads)
  cant → !raised as blower-ground-not-located (not read past the run of its leads)

compressor-low-to-ground ← three-windings: Low to ground, and also clear of every edge: the insulation test, and a senior
4k
  ol → wire as low-to-ground (low at the harness, clear once it touches nothing: the wire before the motor)

fan-motor-electric ← motor-after: Volts at a free fan with a good capacitor: a new motor, proven
239
  0 → board (no volts at its leads)
  121 → !raised as no-start-undecided (one leg of two lost: half the volts of its nameplate)
  196.9 → !raised as no-start-undecided (below the volts of its nameplate)

fan-motor-electric ← motor-after: Volts at a free fan with a good capacitor: a new motor, proven
fan 14 31 45 frame ol
  skip leads spliced | 17.9 96 1.2 | closed | 240 239 comp 13.1 fan 0 | all good | fan | 239 → !raised as no-start-undecided (volts where its leads end, and nobody read through them)

fan-motor-electric ← still-after: The fan’s own capacitor beside the compressor’s, good, and volts: the motor
run
  potential | they don’t come off | spin free | fan 14 31 45 frame ol → !raised as second-capacitor-undecided (the fan’s own capacitor not read)

board-fan-relay ← still-after: No volts at the fan, line at the board: its relay or the lead
out of defrost
  in defrost → observation (a fan that rests in defrost)

board-fan-relay ← still-after: No volts at the fan, line at the board: its relay or the lead
board line in 241
  board line in 0 → !raised as no-start-undecided (no line into the board)
  board line in 121 → !raised as no-start-undecided (one leg of two lost before the board)

electronic-motor-suspect ← ecm-fan: Line and command there, free and dry: motor or module
239
  121 → !raised as electronic-fan-handed-over (one leg of two lost)

blower-motor-electric ← blower-live: A call, volts at the leads, capacitor good, free: the motor
238
  121 → !raised as blower-no-start-undecided (one leg of two lost: half the volts of its nameplate)

electronic-blower-suspect ← blower-live: Constant torque: line and tap there, dry and free: motor or module
119, 115 v
  119 → which-volts (right, or one leg of two: its nameplate is asked for alone)
  119 | cant → !raised as blower-no-start-undecided (right, or one leg of two: nobody read its nameplate)
  119, 208/230 → !raised as blower-no-start-undecided (one leg of two)
  150 → !raised as blower-no-start-undecided (neither one leg nor two, and nobody read its nameplate)

electronic-motor-suspect ← ecm-fan: Line and command there, free and dry: motor or module
rested
  off now | not sure → longer (not sure whether five minutes, and by the record not)
  off now | not sure | not sure → !raised as electronic-fan-handed-over (off just now by the record)

electronic-motor-suspect ← ecm-fan: Line and command there, free and dry: motor or module
free
  wet → !raised as electronic-fan-blocked-or-wet (wet connectors)

electronic-motor-suspect ← ecm-fan: Line and command there, free and dry: motor or module
there
  no command → !raised as electronic-fan-not-called (no command)

compressor-insulation-failed ← insulation: The compressor alone is low, twice, heater off and not cold: a senior confirms
ready, scroll, 500
  ready, scroll, 500 | 0.1 → discharged (once, and its charge is still to be read)
  ready, scroll, 500 | 0.1 | 9.3 / 0.4 / 9.3 → setup (once)
  heater on, scroll, 500 | 0.1 | 9.3 / 0.4 / 9.3 → setup (with the heater on)

compressor-insulation-failed ← insulation: The compressor alone is low, twice, heater off and not cold: a senior confirms
comp 90k fan ol heater ol cable ol
  comp ol fan ol heater 90k cable ol → heater (read at the contactor with the heater on it)

breaker-not-measured ← breaker: It trips again at once: an electrician
ready, reciprocating, 500
  ready, reciprocating, ohmmeter | ol → !raised as insulation-not-taken (a start after a trip, on an ohmmeter alone)

breaker-not-measured ← breaker: It trips again at once: an electrician
9.3 / 0.4 / 9.3
  9.3 / 300 / 9.3 → discharged (a start with the test’s charge on the winding)
  9.3 / 5.1 / 9.3 → discharged (a residual above its limit)
  6.2 / 0.4 / 9.3 → discharged (a residual read by a meter that is not proved)
  cant → !raised as winding-charge-not-gone (a residual that nobody read)

compressor-winding-open ← compressor-terminals: Open at its own terminals, cold: a senior confirms
cr ol cs ol sr ol g ol
  cr .9 cs ol sr ol g ol → agreed as winding-open-at-harness (open at the harness)

compressor-winding-open ← compressor-terminals: Open at its own terminals, cold: a senior confirms
cr .9 cs ol sr ol g ol
  cr .9 cs ol sr ol g ol → pairs-again as all-windings-open (read once)
  cr .9 cs ol sr ol g ol | cr .9 cs 2.7 sr 3.6 g ol → plug as all-windings-open (whole on zeroed leads)
  cr .9 cs ol sr ol g ol | cr .9 cs 2.7 sr 9 g ol → !raised as terminals-wait-for-a-senior (a sum that doesn’t fit)
  cr .9 cs ol sr ol g ol | cr .9 cs 2.7 sr 3.6 g 4k → !raised as compressor-grounded (low to ground the second time)

compressor-winding-open ← compressor-terminals: Open at its own terminals, cold: a senior confirms
cold
  hot → !left as compressor-has-to-cool (open while hot)

compressor-winding-open ← compressor-terminals: Three-phase, one winding open at the terminals: three equal pairs are asked for, and a senior confirms
ol ol 1.2 ol
  1.2 1.2 1.2 ol → plug as winding-open-at-harness (open at the harness, and whole at the terminals)
  ol ol 1.2 ol | 1.2 1.2 1.2 ol → plug as winding-open-at-harness (open once, and whole on zeroed leads)
  1.2 1.2 40 ol | 1.2 1.2 40 ol → !raised as terminals-wait-for-a-senior (pairs that differ, twice)
  ol ol 1.2 ol | 1.2 1.2 40 ol → !raised as terminals-wait-for-a-senior (open once, and then pairs that differ)
  ol ol 1.2 ol | cant → !raised as terminals-wait-for-a-senior (open once, and not read again)

overload-stays-open ← compressor-terminals: Three-phase, all three pairs open at the terminals, cold: its overload stays open
ol ol ol ol
  ol ol 1.2 ol | ol ol 1.2 ol → !raised as compressor-winding-open (one pair reads: no overload lets one alone through)

overload-open ← compressor-windings: C open on a hot shell: the overload, left to cool
hot
  cold → agreed as common-lead-open (on a cold shell)

overload-stays-open ← compressor-terminals: The overload stays open, cold
cold
  hot → !left as compressor-has-to-cool (open while hot)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
240 239 comp 92 fan .9
  240 239 comp 92 fan .9 → stands (locked-rotor amps alone)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
221 comp 92
  238 comp 0 → observation as compressor-draws-nothing (no amps: an open wire, plug or overload)
  238 comp 13 → !raised as no-start-undecided (amps of a motor that turns)
  238 | cant → !raised as no-start-undecided (amps not read during the try)
  171 comp 70 | cant → !raised as supply-not-located (volts that fall during the try)
  cant → !raised as no-start-undecided (volts not read during the try)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
rested
  off now | not sure → !raised as no-start-undecided (not sure whether it was long enough)
  off 5 minutes | 221 comp 92 → !raised as no-start-undecided (tried right after it was off, whatever is said)
  not sure → !raised as no-start-undecided (nobody knows since when it is off)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
still stands
  started → !raised as starts-with-an-assist (it starts with an assist)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
assist fitted
  no assist → !raised as no-start-undecided (no assist tried)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
219 comp 94
  238 comp 0 → observation as compressor-draws-nothing (no amps in the try with the assist)
  238 comp 13 | still stands → !raised as no-start-undecided (amps of a motor that turns)
  238 | cant → !raised as no-start-undecided (amps not read during the try with the assist)
  171 comp 70 | cant → !raised as supply-not-located (volts that fall during the try with the assist)
  cant → !raised as no-start-undecided (volts not read during the try with the assist)
`;

export const AIR_AND_CIRCUIT = `
airflow-short ← not-cold: A clogged filter and a high split: changed and proven
e
  ice | house → off (ice alone)

airflow-short ← not-cold: A clogged filter and a high split: changed and proven
return 75 supply 50 wb 63
  return 75 supply 56 wb 63 → right (dirt, with a split that is in its band)

condenser-air-short ← outdoors: Matted with cottonwood: cleaned and proven
cottonwood, small line 118 outdoor 90
  nothing, small line 98 outdoor 85 → person (a small line that is not hot)
  cottonwood, small line 98 outdoor 85 → wash-first (dirt alone)

undercharge ← circuit: Short of refrigerant: superheat high, subcooling low
e
  ice | house → off (ice)

undercharge ← circuit: Short of refrigerant: superheat high, subcooling low
all four
  not 15 minutes → !left as not-ready-for-gauges (before it has settled)

undercharge ← circuit: Short of refrigerant: superheat high, subcooling low
suct 80 head 230 big 48 small 76 ret 75 wet bulb 63 od 85
  suct 80 → readings (a low suction alone)
  suct 80 head 342 big 28 small 94 ret 75 wet bulb 63 od 85 → !raised as circuit-undecided (a low suction with the rest in its band)
  suct 80 head 342 big 48 small 87 ret 75 wet bulb 63 od 85 → across (superheat high, and subcooling in its band)
  suct 80 head 230 big 48 small 70.3 ret 75 wet bulb 63 od 85 → !raised as circuit-undecided (subcooling on the edge of its range)

liquid-restricted ← circuit: A drier that restricts: 9 °F across
before 96 after 87
  before 96 after 95 → !raised as restriction-not-located (no difference across anything)

overcharge-or-air ← circuit: Too much in it, or air
suct 150 head 480 big 62 small 105 ret 75 wet bulb 63 od 85
  suct 150 head 480 big 62 small 119 ret 75 wet bulb 63 od 85 → !raised as condenser-air-elsewhere (a high head alone)

metering-device ← circuit: The valve feeds too much, bulb tight
bulb tight
  loose → closed as bulb-loose (with its bulb loose)

compressor-not-pumping ← circuit: It doesn’t pump, and what reads the same is ruled out
suct 160 head 250 big 66 small 82 ret 75 wet bulb 63 od 85
  suct 160 → readings (one pressure)

compressor-not-pumping ← circuit: It doesn’t pump, and what reads the same is ruled out
comp 7.1 valve, unloader, rotation
  comp 12.5 valve → !raised as pumping-undecided (amps that are not low)
  comp 7.1 → !raised as pumping-undecided (nothing ruled out that reads the same)

reversing-not-commanded ← warm: No command at a good coil
left alone
  just now | not sure | coil 0 → !raised as reversing-undecided (0 V within five minutes of a change of call, by the record)
  not sure | waited | coil 0 → !raised as reversing-undecided (nobody knows since when the call stands)

reversing-valve ← warm: Hot gas leaks through
heat 0 big 55 small 98 before 55 after 66
  heat 0 big 55 small 98 before 55 after 56 → observation as reversing-valve-in-order (1 °F across it)
  heat 21 big 55 small 98 before 55 after 66 → !raised as strip-heat-in-cooling (with electric heat on)

inverter-handed-over ← inverter: It stays closed and goes to a senior with its code
both powered
  code E5, both powered → may-open (a code alone)

repair-proven ← dual-capacitor-readings: HERM at 36.1 of 45 µF ±6 %
240 239 comp 13.1 fan .9 split 19
  skip no clamp meter → !raised as restart-not-proven (no figures)
  240 239 comp 30 fan .9 split 19 → !raised as compressor-above-mcc (more amps than it may draw for long)

runs-nothing-found ← restart: Within its figures, the split a quarter of an hour later
split 19
  split 9 → off (a split that is short)
`;
