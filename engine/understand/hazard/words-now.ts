/**
 * Words that mean danger now, as people type them: each raises the emergency. Lower case, without accents, apostrophes
 * and punctuation. The longest phrase at a place counts, of all lists.
 */
import type { Body } from '../../schema.ts';

export type Hazard = Body<'alarmed'>['hazard'];
export const list = (phrases: string): string[] => phrases.split(',').map((phrase) => phrase.trim());

export const NOW: readonly [Hazard, string[]][] = [
  [
    'shock',
    list(`shock, shocked, shocks, shocking, schocked, electric shock, electrical shock, electrocuted,
      electrocution, got bit, gotbit, gotshocked, got bitten, bit me, bites me, got bite by,
      popped me, poped me, took a hit off the cap, took a hit off the capacitor, took a hit from the cap, took a hit from the capacitor,
      got popped by the cap, got popped by the capacitor, cap popped me, capacitor popped me, cap got me, capacitor got me,
      water is electrified, cabinet is electrified, case is electrified, unit is electrified, panel is electrified,
      bit him, bit her, bit by, bitten by, bit my hand, bit my finger, bit my arm, been bit, was bit, got zapped, got zaped, zapped me,
      zapped him, zapped her, zapped my, zaped me, was zapped, been zapped, i zapped, zap me, got a zap, i got hit, got hit by 240,
      got hit by 230, got hit by 220, got hit by 208, got hit by 120, got hit by 277, got hit by 480, got hit by 24, got hit with 240,
      got hit with 120, got hit by the cap, got hit by the capacitor, got hit by voltage, got hit by current, lit me up, lights me up,
      lit him up, got lit up, got a jolt, felt a jolt, got jolted, jolted me, a jolt went, knocked me back, knocked me down,
      knocked me off, knocked me out, knocked me on, knocked him back, knocked him down, knocked him off, threw me across, threw me back,
      threw him, me dio corriente, me dio la corriente, me dio la luz, me dio toque, me dio un toque, me dio un calambre, dio toques,
      me pego la corriente, me agarro la corriente, le dio la corriente, toque electrico, descarga electrica, choque electrico,
      electrocutado, electrocuto, electrocute, electrocutada`),
  ],
  [
    'fire',
    list(`fire, on fire, caught fire, catching fire, flames, flaming, in flames, open flame, flame shooting, flame coming out, flame shot, ablaze, arc flash,
      fire is out of control, fuego, incendio, llamas, en llamas, se incendia, se incendio, se prendio`),
  ],
  [
    'smoke',
    list(`smoke, smoking, smokes, smokey, smoky, smell of smoke, smoke smell, humo, humito, humea, echa humo,
      humeando, olor a humo, huele a humo`),
  ],
  [
    'burning',
    list(`burning, burning smell, smell of burning, se quema, se esta quemando, quemandose,
      quemando, huele a quemado, olor a quemado`),
  ],
  [
    'explosion',
    list(`exploded, explodes, exploding, explosion, explode, exploto, blew up in my face,
      blew up in his face, blew up in her face, blew up in my hand, blew up in my hands, blew up in his hand, blew up on me`),
  ],
  [
    'gas',
    list(`gas smell, gassmell, smell gas, smells gas, smell of gas, smelling gas, smelled gas, smelt gas, smells like gas, smell like gas,
      gas odor, gas odour, odor of gas, odour of gas, smell natural gas, smell propane, smells like propane, propane smell,
      natural gas smell, natural gas leak, propane leak, propane gas leak, rotten egg smell, rotten eggs, smells like rotten eggs,
      huele a gas, olor a gas, co alarm is going off, co alarm going off, co detector going off, co detector is going off,
      carbon monoxide alarm going off, carbon monoxide alarm is going off, carbon monoxide detector going off`),
  ],
  [
    'hurt',
    list(`hurt, hurting, injured, injury, injuries, someone hurt, got hurt, burned my, burnt my, burned his, burned her, burned myself,
      burnt myself, burnt his, i am bleeding, im bleeding, he is bleeding, hes bleeding, she is bleeding, shes bleeding,
      helper is bleeding, hand is bleeding, arm is bleeding, finger is bleeding, head is bleeding, bleeding badly, bleeding bad,
      bleeding a lot, man down, fell off the roof, fell off the ladder, fell off ladder, fell off roof, fell from the roof,
      fell from the ladder, fell through the ceiling, fell through the roof, fell through the attic, fell thru the ceiling, fell thru the roof,
      fell thru the attic, fell of the roof, fell of the ladder, fell of ladder, fell down the stairs,
      slipped off the ladder, slipped off the roof, ambulance, paramedics, call 911, called 911, calling 911, dial 911, need 911,
      cut my hand, cut my finger, lost a finger, lost my finger, lost his finger, lost her finger, cut off my finger, cut off his finger, cut my thumb, cut my arm, cut my leg, cut his hand, cut his finger, cut his arm, sliced my,
      caught my finger, caught my hand, finger got caught, hand got caught, finger caught in, hand caught in, pinned under,
      hand in the fan blade, finger in the fan blade, hand got in the fan,
      finger got in the fan, fingers got in the fan, broke my arm, broke my wrist, broke my leg, broke my ankle, broke my hand, broke his arm, broke his leg, in my eyes, in his eyes, in my face, in his face, cut myself, through my hand, through my foot,
      frostbite, needs stitches, need stitches, cant feel my hand, cant feel my arm, dog bit me, bit by a dog, bit by the dog,
      bit by a snake, herido, herida, heridos, lastimado, lastimada, lesionado, me queme, se quemo la mano, me corte la mano, me corte el dedo, me corte el brazo, se corto la mano, se corto el dedo, se lastimo, me lastime,
      sangrando, ambulancia, se cayo del techo, se cayo de la escalera, me cai del techo, me cai de la escalera`),
  ],
  [
    'collapse',
    list(`fainted, fainting, passed out, past out, passing out, passes out, unconscious, not breathing,
      isnt breathing, stopped breathing, cant breathe, cant breath, cannot breathe, cannot breath, no pulse, he collapsed, she collapsed,
      helper collapsed, customer collapsed, guy collapsed, partner collapsed, i collapsed, he blacked out, she blacked out,
      i blacked out, he is not moving, hes not moving, is unresponsive, hes unresponsive, shes unresponsive, helper unresponsive,
      wont wake up, not waking up, going to pass out, gonna pass out, about to pass out, tech is down, helper is down, helper down, partner is down, partner down,
      he wont respond, she wont respond, he doesnt respond, she doesnt respond,
      he is not responding, hes not responding, she is not responding, shes not responding, helper is not responding, chest pain, chest pains, heart attack, having a stroke, seizure, choking, se desmayo, desmayado, desmayada,
      inconsciente, no respira, no responde la senora, no responde el senor`),
  ],
  [
    'heat',
    list(`heat stroke, heatstroke, heat stoke, heat strok, heat exhaustion, heat exaustion, sunstroke, sun stroke,
      golpe de calor, insolacion`),
  ],
  [
    'refrigerant',
    list('ammonia leak, ammonia smell, smell of ammonia, smells like ammonia, smell ammonia, ammonia leaking'),
  ],
];
