import { choose, confirm, degrees, flow, form, hours, judge, one, verdict } from '../../engine/vocabulary.ts';
import { washedFirst } from '../cooling/wash.ts';
import { REFRIGERATION } from '../examples/refrigeration.ts';
import { evaporator, runs } from './runs.ts';
import { tripped } from './tripped.ts';

/** Walk-in or reach-in: the goods first, then what holds a sound compressor off. */
export const refrigeration = flow({
  id: 'refrigeration',
  version: 1,
  title: 'Walk-in or reach-in',
  exits: ['go-on', 'settled', 'raised'],
  examples: REFRIGERATION,
  steps: {
    goods: form({
      say: 'The goods first: how warm, for how long? Then: what holds the compressor off?',
      body: [
        'Food above 41 °F counts by the hour. The customer moves it, and decides what is thrown away.',
        'Held off or not pulling down: condenser and its fan first. Timer in defrost? Evaporator fans? Thermostat or solenoid? High-pressure reset? Oil safety?',
      ],
      callouts: [
        {
          level: 'caution',
          text: 'A cold room: nobody inside alone with the door shut. A leak indoors: out, air, no flame. Propane (R-290) on the plate: look, switch nothing.',
        },
      ],
      why: 'Hours above 41 °F decide how soon somebody has to act. And in a box the compressor is often held off by something that works.',
      source: [
        '41 °F: FDA Food Code, perishable food is kept at or below',
        'The order: common practice, no single source',
      ],
      parts: {
        product: degrees('Product temperature', { words: ['product', 'food', 'box'] }),
        hours: hours('Hours above', { optional: true, words: ['hours', 'for'] }),
        refrigerant: one(
          'Refrigerant on the plate',
          {
            'r-404a': { label: 'R-404A', words: ['r404a', '404a', '404'] },
            'r-134a': { label: 'R-134a', words: ['r134a', '134a'] },
            'r-290': { label: 'R-290, propane', words: ['r290', '290', 'propane'] },
            other: { label: 'Another, or not known', words: ['other', 'not known', 'unknown'] },
          },
          { optional: true },
        ),
        off: one('Compressor', {
          nothing: {
            label: 'Nothing holds it: it is called and doesn’t start',
            words: ['nothing', 'called', 'hums trips', 'hums and trips', 'doesnt start'],
          },
          runs: {
            label: 'Nothing: it runs, and the box stays warm',
            words: ['runs', 'it runs', 'running', 'runs and stays warm', 'runs not cold'],
          },
          dirty: {
            label: 'Condenser dirty or blocked, or its fan still',
            words: ['dirty', 'condenser dirty', 'plugged', 'blocked', 'grease', 'condenser fan still'],
          },
          defrost: { label: 'In defrost', words: ['defrost', 'in defrost', 'timer'] },
          fans: { label: 'Evaporator fans still', words: ['evap fans', 'fans still', 'evaporator fan'] },
          stat: {
            label: 'Thermostat satisfied, or solenoid without a call',
            words: ['thermostat', 'solenoid', 'satisfied'],
          },
          lp: { label: 'Low-pressure switch open', words: ['low pressure', 'lp'] },
          hp: { label: 'High-pressure switch tripped', words: ['high pressure', 'hp', 'reset'] },
          oil: { label: 'Oil safety tripped', words: ['oil', 'oil safety', 'oil failure'] },
        }),
      },
      cant: 'burns',
      next: 'burns',
    }),
    burns: judge('may-burn', {
      of: { which: 'goods' },
      limits: {},
      quiet: ['calm', 'undecided'],
      then: { burns: 'propane', calm: 'holds', undecided: 'plate' },
    }),
    // As on gauges: what is not known counts as one that burns, so the plate is asked for before anything is switched.
    plate: form({
      say: 'Which refrigerant? The plate of the condensing unit or of the compressor says it.',
      body: ['Look, open and switch nothing for it.'],
      callouts: [{ level: 'warning', text: 'Until it is known it counts as one that burns: no flame, no spark.' }],
      why: 'A relay that opens in a leak of propane is a spark in gas.',
      parts: {
        refrigerant: one('Refrigerant', {
          'r-404a': { label: 'R-404A', words: ['r404a', '404a', '404'] },
          'r-134a': { label: 'R-134a', words: ['r134a', '134a'] },
          'r-22': { label: 'R-22', words: ['r22', '22'] },
          'r-290': { label: 'R-290, propane', words: ['r290', '290', 'propane'] },
          other: { label: 'Another, or not to be read', words: ['other', 'another', 'unreadable', 'unknown'] },
        }),
      },
      cant: 'known',
      next: 'known',
    }),
    known: judge('may-burn', {
      of: { which: 'plate' },
      limits: {},
      quiet: ['calm'],
      then: { burns: 'propane', calm: 'holds', undecided: 'may-burn' },
    }),
    'may-burn': verdict({
      verdict: 'refrigerant-may-burn',
      title: 'The refrigerant is not known: it counts as one that burns, over to a senior',
      says: [
        'Until its plate says otherwise any spark may light a leak. No relay is pulled and nothing switched near it.',
      ],
      next: [
        'Ventilate, no flame, leave the plug where it is until the air is clear.',
        'A senior finds out what is in it, and takes it from here. The customer moves the goods.',
      ],
      who: 'senior',
      judged: ['known'],
      evidence: ['goods', 'plate'],
      raises: 'not-covered',
      then: '!raised',
    }),
    propane: verdict({
      verdict: 'flammable-refrigerant-handed-over',
      title: 'A refrigerant that burns: over to a senior',
      says: ['A small charge, and any spark lights a leak. No relay is pulled and nothing switched near it.'],
      next: [
        'Ventilate, no flame, leave the plug where it is until the air is clear.',
        'A senior takes it from here. The customer moves the goods.',
      ],
      who: 'senior',
      judged: ['burns', 'known'],
      evidence: ['goods', 'plate'],
      raises: 'not-covered',
      then: '!raised',
    }),
    holds: judge('box-holds', {
      of: { seen: 'goods' },
      limits: {},
      quiet: ['called', 'dirty', 'defrost', 'box', 'switch', 'tripped', 'runs', 'undecided'],
      then: {
        called: '!go-on',
        dirty: 'clean',
        defrost: 'defrost',
        box: 'evaporator',
        switch: 'pressure',
        tripped: 'tripped',
        runs: 'runs-dirt',
        undecided: 'dirt',
      },
    }),
    defrost: confirm({
      say: 'Turn the timer out of defrost by its knob. After five minutes: does it run?',
      body: ['Only where the knob is reached from outside. Behind a door or beside bare terminals: still off.'],
      why: 'A timer that stopped in defrost, or a long defrost, keeps a sound unit off.',
      yes: 'It runs now',
      words: ['runs', 'it runs', 'running'],
      no: { label: 'Still off', words: ['still off', 'nothing'], to: 'dirt' },
      next: 'was-defrost',
    }),
    'was-defrost': verdict({
      verdict: 'stood-in-defrost',
      title: 'It stood in defrost',
      says: ['Out of defrost it runs.'],
      next: [
        'Does the timer turn? Mark its position and look again in half an hour.',
        'Its figures are read before anybody leaves. The customer watches the goods.',
      ],
      who: 'junior',
      judged: ['holds'],
      evidence: ['goods', 'defrost'],
      then: '!settled',
    }),
    evaporator: evaporator('held'),
    held: verdict({
      verdict: 'held-by-the-box',
      title: 'The box holds the compressor off, or was said to: its evaporator first',
      says: [
        'What was seen of fans, coil, thermostat and solenoid is on the record. The condensing unit was not tested.',
      ],
      next: [
        'A senior leads on at the evaporator with what was seen: fan feed, defrost, thermostat, solenoid.',
        'The customer moves the goods.',
      ],
      who: 'senior',
      judged: ['holds'],
      evidence: ['goods', 'evaporator'],
      raises: 'not-covered',
      then: '!raised',
    }),
    pressure: verdict({
      verdict: 'pressure-or-oil-safety-open',
      title: 'A low-pressure or oil safety holds it off',
      says: [
        'The switch is not bad: the charge, the cold or the oil is the question.',
        'A box that is satisfied, in defrost, or with its solenoid shut pumps down, and its low-pressure switch opens in order.',
      ],
      next: [
        'Low pressure: call, solenoid and frost at the evaporator are looked at before anything else.',
        'It is reset once at most and never bridged. A certified person reads the circuit.',
        'The customer moves the goods.',
      ],
      who: 'certified',
      judged: ['holds'],
      evidence: ['goods'],
      raises: 'verdict',
      then: '!raised',
    }),
    ...tripped,
    ...runs,
    dirt: choose({
      say: 'Condenser and its fan: what do you see?',
      body: ['Cap-tube reach-ins: always first. Grease, dust, cardboard in front of it.'],
      why: 'A dirty condenser trips overloads and high pressure on a sound unit.',
      options: {
        clean: { label: 'Clean, air comes through', words: ['clean', 'fine', 'ok'], to: '!go-on' },
        dirty: { label: 'Dirty or blocked', words: ['dirty', 'plugged', 'blocked', 'grease'], to: 'clean' },
      },
      cant: '!go-on',
    }),
    clean: confirm({
      say: 'Off at its means, your own lock on, the blade at a stand: clean the condenser and clear the air’s way.',
      yes: 'Cleaned, clear',
      words: ['cleaned', 'clean now', 'clear'],
      no: { label: 'Not now', words: ['not now', 'not today'], to: 'not-cleaned' },
      unsure: 'not-cleaned',
      next: 'washed',
    }),
    washed: washedFirst(['goods', 'dirt', 'clean'], '!go-on'),
    'not-cleaned': verdict({
      verdict: 'condenser-left-dirty',
      title: 'The condenser is dirty and was not cleaned: the dead tests go on',
      says: ['What trips on heat trips again on it. No restart on it proves a repair for long.'],
      next: ['Say so to the customer, and when it is cleaned.'],
      who: 'junior',
      judged: [],
      evidence: ['goods', 'dirt', 'clean'],
      then: '!go-on',
    }),
  },
});
