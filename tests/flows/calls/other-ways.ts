/** Ways of the pages that neither the proof's walk nor a worked call goes; `read.ts` says how rows are read. */
const BLOCK = 'fuses 0.1 0.1 contacts .1 .1 coil 12.6 t1g ol t2g ol';

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

← blower-restart: It does not start
volts 240 blower 0
  volts 240 blower 3.6 split 9 → off as capacitor-good (the split is short)
  volts 240 blower 3.6 | split 18 → !done as blower-runs-nothing-found (the split some minutes later)
  volts 240 blower 3.6 | skip no thermometer → !raised as blower-not-proven (the split not read)

← chatter: Enough volts and it buzzes: the contactor
coil 23.1
  coil 18.2 | chatters → door (low, the source not read)
  coil 18.2 rc 19 | chatters → door (low at the source)
  coil 0 | quiet → door (no volts at all)

← runs-on: No volts at the coil and closed: welded
contacts 0.1 0.1
  contacts 5 5 → !raised as runs-on-undecided (neither closed nor open)

← contactor-dead: Volts at the coil, coil right, not in: jammed
y-c 25.6 coil 25.4
  y-c 20.2 coil 20.1 | stays out → door (under what it needs to pull in)
  y-c 31 coil 30.8 | stays out → !raised as control-undecided (more than the circuit has)

← dead-block: No capacitor where one is expected
psc
  ecm | yes | pull-out, breaker, no other feed, two legs, outlet | yes | clean, 0 caps | 121 / 0.2 0 0.1 / 0 0 / 121 | ${BLOCK} → !raised as no-capacitor (an electronic fan)
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
`;
