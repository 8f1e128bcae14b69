/**
 * What does not suffice condemns nothing: each row takes away from the line that carries a verdict, and the verdict must
 * not come. Why each is weak: common practice, no single source. `read.ts` says how rows are read.
 */
const DEAD = '121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.6 0.1 0.5 / 9.3';
const INDOOR =
  'yes | breaker, no other feed, two legs, outlet | yes | clean, 1 cap, 7.5 6% 440 | 121 / 0.2 0 0.1 / 0 0 / 121 | 9.3 / 0.4 / 9.3';
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
  dark | qualified | 230 118 113 → !raised as single-phasing (dark, and a line is missing)

phase-monitor-holds-off ← phase-monitor: It shows a fault, and the lines read right: it stays in, and a senior leads on
230 231 229
  skip no meter → !raised as phase-monitor-not-explained (the lines not read)

external-overload-open ← refrigeration: Start capacitor alone, the external overload open
product 47 r134a hums trips
  product 47 hums trips → plate (dead tests with the refrigerant left out)
  product 47 other hums trips | other → !raised as refrigerant-may-burn (dead tests beside a refrigerant that nobody knows)
  product 47 hums trips | skip no plate → !raised as refrigerant-may-burn (dead tests with the plate unread)

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
  contacts .1 .1 coil 6.2 → !raised as contactor-undecided (ohms between the bands)

contactor-contacts ← contactor-dead: Its contacts are done
contacts 3.4 .1 coil 12.4
  contacts 0.5 .1 coil 12.4 → why as contactor-jammed (pressed in and under 1 Ω, whatever they look like)

contactor-contacts ← dead-block: A contact reads high with the armature pressed in
fuses 0.1 0.1 contacts .1 3.2 coil 12.6 t1g ol t2g ol
  fuses 0.1 0.1 contacts .1 .4 coil 12.6 t1g ol t2g ol → asked-for (pressed in and under 1 Ω, whatever they look like)

contactor-jammed ← contactor-dead: Volts at the coil, coil right, not in: jammed
y-c 25.6 coil 25.4
  y-c 25.6 coil 19 → !raised as control-volts-dropped (not in, with less than pull-in volts)

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
r-c 0 primary 240
  r-c 0 | ecm | waited | ${INDOOR} | fuse 0.1 sec ol y-c 12 → !raised as transformer-primary-not-read (its primary not read)
  r-c 0 primary 150 | ecm | waited | ${INDOOR} | fuse 0.1 sec ol y-c 12 → !raised as transformer-primary-not-read (a primary outside every supply)

control-short-found ← short-outdoors: A blown board fuse, the short in the outdoor unit: found, under its own lock, before the new one
fuse ol sec 1.2 y-c 1.5
  fuse ol sec 1.2 y-c 12 → !raised as board-fuse-without-cause (a blown fuse alone)

control-short-found ← short-outdoors: A blown board fuse, the short in the outdoor unit: found, under its own lock, before the new one
1.4
  ol | 12 → !raised as board-fuse-short-not-located (a short that neither end shows)

transformer-overloaded ← indoor-source: More load than its VA
r-c 20 primary 240 load amps 2.5 a, 40 va
  r-c 20 primary 240 load amps 1.2 a, 40 va → !raised as control-volts-low (low under a load that it can carry)
  r-c 26 primary 240 → !raised as control-source-undecided (volts that are in their band)

low-pressure-open ← control: The low-pressure switch: certified
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

high-pressure-unexplained ← control: The high-pressure switch with a clean coil: certified
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

discharge-thermostat-open ← control: The discharge thermostat: it ran too hot
left alone
  changed just now | y-c 25.6 coil 0 → waited (0 V behind it, within five minutes of a change of call)

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
  240v → plate as control-not-apart (read along a coil on line volts)
  package → plate as control-not-apart (read where the transformer is in the same cabinet)
  not sure → plate as control-not-apart (read before anybody knows what the coil is on)

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
  r-c 26.1 y-c 26 → cable-drive (the call at both ends of the indoor unit)

thermostat-or-its-cable ← indoor-source: The call doesn’t leave the thermostat
y-c 0 coil 0
  y-c 25.6 coil 0 → across-24 (the call that arrives outdoors)

thermostat-or-its-cable ← indoor-source: A blank thermostat, the call left alone: none leaves it
left alone
  just now | waited | r-c 26.1 y-c 0 → !raised as call-read-too-early (0 V within five minutes of a change of call)

thermostat-cable-open ← indoor-source: The cable is open and is not mended today
calling
  blank | doors on | qualified | left alone | r-c 26.1 y-c 26 → !raised as call-not-read-outdoors (nothing read outdoors)

thermostat-cable-open ← indoor-source: The cable is open and is not mended today
y-c 0 coil 0
  y-c 12 coil 0 | doors on | qualified | left alone | r-c 26.1 y-c 26 → !raised as call-not-read-outdoors (some volts arrive outdoors)

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
  238 119 3 → plate as capacitor-good (a line to ground alone, with volts between the lines)

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
fan-bearings ← motors: The fan binds: its motor and a new capacitor
stiff, scrapes
  spin free → pairs (it hums, and turns free)

fan-winding-open ← fan-windings: Open on a cool motor: the motor
cool
  hot → plate as fan-protector-open (open while hot)

fan-winding-open ← fan-windings: Open on a cool motor: the motor
fan 15 ol ol frame ol
  fan 15 33 90 frame ol | fan 15 33 90 frame ol → plate as fan-windings-undecided (a sum that does not fit)

fan-motor-electric ← motor-after: Volts at a free fan with a good capacitor: a new motor, proven
239
  0 → board (no volts at its leads)

board-fan-relay ← still-after: No volts at the fan, line at the board: its relay or the lead
out of defrost
  in defrost → observation (a fan that rests in defrost)

board-fan-relay ← still-after: No volts at the fan, line at the board: its relay or the lead
board line in 241
  board line in 0 → !raised as no-start-undecided (no line into the board)

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
cold
  hot → !left as compressor-has-to-cool (open while hot)

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
221
  171 | cant → !raised as supply-not-located (volts that fall during the try)
  cant → !raised as no-start-undecided (volts not read during the try)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
rested
  off now | waited | 221 → !raised as no-start-undecided (tried right after it was off)
  not sure → !raised as no-start-undecided (nobody knows since when it is off)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
still stands
  started → !raised as starts-with-an-assist (it starts with an assist)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
assist fitted
  no assist → !raised as no-start-undecided (no assist tried)

compressor-seized ← still-after: Volts held, capacitor good, an assist tried: seized, and a senior confirms
219
  171 | cant → !raised as supply-not-located (volts that fall during the try with the assist)
  cant → !raised as no-start-undecided (volts not read during the try with the assist)
`;

export const AIR_AND_CIRCUIT = `
airflow-short ← not-cold: A clogged filter and a high split: changed and proven
e
  ice → off (ice alone)

airflow-short ← not-cold: A clogged filter and a high split: changed and proven
return 75 supply 50 wb 63
  return 75 supply 56 wb 63 → right (dirt, with a split that is in its band)

condenser-air-short ← outdoors: Matted with cottonwood: cleaned and proven
cottonwood, small line 118 outdoor 90
  nothing, small line 98 outdoor 85 → person (a small line that is not hot)
  cottonwood, small line 98 outdoor 85 → wash-first (dirt alone)

undercharge ← circuit: Short of refrigerant: superheat high, subcooling low
e
  ice → off (ice)

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
