/** Every judgement by its id. Flows name them by these ids; the types of a page's outcomes, facts and limits come from here. */
import { absence } from './absence.ts';
import { alternative } from './alternative.ts';
import { bridge } from './bridge.ts';
import { bus } from './bus.ts';
import { calledBefore } from './caller/called-before.ts';
import { callerChecks } from './caller/caller-checks.ts';
import { danger } from './caller/danger.ts';
import { heatIndex } from './caller/heat-index.ts';
import { likelyCausesOfCall } from './caller/likely-causes.ts';
import { load } from './caller/load.ts';
import { urgency } from './caller/urgency.ts';
import { capacitors } from './capacitors.ts';
import { caseLeak } from './case-leak.ts';
import { circuit } from './charge/circuit.ts';
import { drier } from './charge/drier.ts';
import { leakSearch } from './charge/leak-search.ts';
import { burns } from './charge/may-burn.ts';
import { notPumping } from './charge/not-pumping.ts';
import { callPath } from './control/call-path.ts';
import { coilVolts } from './control/coil-volts.ts';
import { contactor } from './control/contactor.ts';
import { foreignVolts } from './control/foreign-volts.ts';
import { fuses } from './control/fuses.ts';
import { hopping } from './control/hop.ts';
import { outward } from './control/outward.ts';
import { transformer } from './control/transformer.ts';
import { airflow } from './cooling/airflow.ts';
import { boxHolds } from './cooling/box-holds.ts';
import { condenser } from './cooling/condenser.ts';
import { heatStrips } from './cooling/heat-strips.ts';
import { refrigerantCause } from './cooling/refrigerant-cause.ts';
import { split } from './cooling/split.ts';
import { subcooling } from './cooling/subcooling.ts';
import { superheat } from './cooling/superheat.ts';
import { reversingCoil } from './heat-pump/reversing-coil.ts';
import { reversingCommand } from './heat-pump/reversing-command.ts';
import { valveLines } from './heat-pump/valve-lines.ts';
import { hold } from './hold.ts';
import { known } from './known.ts';
import { minutesSince } from './minutes-since.ts';
import { more } from './more.ts';
import { motors } from './motors.ts';
import { observed } from './observed.ts';
import { diagram } from './part/diagram.ts';
import { history } from './part/history.ts';
import { newPart } from './part/new-part.ts';
import { substitutes } from './part/substitutes.ts';
import { printSections } from './print-sections.ts';
import { residual } from './residual.ts';
import { blowerRestart } from './restart/blower.ts';
import { contactDrop } from './restart/contact-drop.ts';
import { evenedOut } from './restart/evened-out.ts';
import { restart } from './restart/restart.ts';
import { sectionOhms } from './section-ohms.ts';
import { sectionValues } from './section-values.ts';
import { sight } from './sight.ts';
import { singleSection } from './single-section.ts';
import { bleedResistor } from './start/bleed-resistor.ts';
import { startCapacitor } from './start/capacitor.ts';
import { currentRelay } from './start/current-relay.ts';
import { potentialRelay } from './start/potential-relay.ts';
import { ptc } from './start/ptc.ts';
import { breaker } from './supply/breaker.ts';
import { fedVolts } from './supply/fed-volts.ts';
import { supplyLocated } from './supply/located.ts';
import { nameplate } from './supply/nameplate.ts';
import { runningAmps } from './supply/running-amps.ts';
import { supply } from './supply/supply.ts';
import { voltsHeld } from './supply/volts-held.ts';
import { voltsThere } from './supply/volts-there.ts';
import { tabs } from './tabs.ts';
import { threeTerminals } from './three-terminals.ts';
import { tripped } from './tripped.ts';
import { underLoadValues } from './under-load.ts';
import { unitClass } from './unit-class.ts';
import { blowerWindings } from './windings/blower.ts';
import { closedOhms } from './windings/closed-ohms.ts';
import { compressorWindings } from './windings/compressor.ts';
import { fanWindings } from './windings/fan.ts';
import { groundBranches } from './windings/ground-branches.ts';
import { insulation } from './windings/insulation.ts';
import { leadsToGround, loadsToGround } from './windings/loads-to-ground.ts';
import { readsAgain } from './windings/reads-again.ts';
import { threeWindings } from './windings/three.ts';
import { windingResidual } from './windings/winding-residual.ts';

export const judgements = {
  absence,
  bridge,
  residual,
  hold,
  capacitors,
  more,
  'minutes-since': minutesSince,
  'unit-class': unitClass,
  'supply-located': supplyLocated,
  'evened-out': evenedOut,
  'fed-volts': fedVolts,
  'volts-held': voltsHeld,
  'volts-there': voltsThere,
  'foreign-volts': foreignVolts,
  breaker,
  'call-path': callPath,
  outward,
  'closed-ohms': closedOhms,
  'reads-again': readsAgain,
  'ground-branches': groundBranches,
  'print-sections': printSections,
  motors,
  substitutes,
  'new-part': newPart,
  diagram,
  history,
  'contact-drop': contactDrop,
  known,
  sight,
  tabs,
  'section-values': sectionValues,
  'case-leak': caseLeak,
  'section-ohms': sectionOhms,
  restart,
  'blower-restart': blowerRestart,
  alternative,
  fuses,
  contactor,
  'three-terminals': threeTerminals,
  'winding-residual': windingResidual,
  'single-section': singleSection,
  'under-load': underLoadValues,
  'coil-volts': coilVolts,
  hop: hopping,
  transformer,
  bus,
  'start-capacitor': startCapacitor,
  'bleed-resistor': bleedResistor,
  'potential-relay': potentialRelay,
  'current-relay': currentRelay,
  ptc,
  split,
  superheat,
  subcooling,
  'refrigerant-cause': refrigerantCause,
  observed,
  tripped,
  'box-holds': boxHolds,
  airflow,
  condenser,
  'heat-strips': heatStrips,
  circuit,
  drier,
  'may-burn': burns,
  'not-pumping': notPumping,
  'leak-search': leakSearch,
  'reversing-coil': reversingCoil,
  'reversing-command': reversingCommand,
  'valve-lines': valveLines,
  'heat-index': heatIndex,
  urgency,
  danger,
  'called-before': calledBefore,
  'caller-checks': callerChecks,
  'likely-causes': likelyCausesOfCall,
  load,
  'compressor-windings': compressorWindings,
  'fan-windings': fanWindings,
  'blower-windings': blowerWindings,
  'three-windings': threeWindings,
  'loads-to-ground': loadsToGround,
  'leads-to-ground': leadsToGround,
  insulation,
  nameplate,
  supply,
  'running-amps': runningAmps,
} as const;

export type JudgementId = keyof typeof judgements;
type At<Id extends JudgementId> = (typeof judgements)[Id];
export type OutcomeOf<Id extends JudgementId> = At<Id>['outcomes'][number];
export type TakesOf<Id extends JudgementId> = At<Id>['takes'][number];
export type LimitsOf<Id extends JudgementId> = At<Id>['limits'][number];
