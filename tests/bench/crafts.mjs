/** Single calls of the crafts, beside another library where one calculates the same, else beside a copy of the answer. */
import psychrolib from 'psychrolib';
import * as stillroom from 'stillroom';
import { airPressure, saturationPressure } from 'stillroom/steam';
import { beside } from './measure.mjs';
import { section, tell } from './report.mjs';

psychrolib.SetUnitSystem(psychrolib.SI);

const PHYSICS = [
  ['saturation pressure', () => saturationPressure({ temperature: '80 degC' }), () => psychrolib.GetSatVapPres(80)],
  [
    'standard pressure of the air',
    () => airPressure({ elevation: '1000 m' }),
    () => psychrolib.GetStandardAtmPressure(1000),
  ],
];

const process = {
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'pint',
  method: 'boiling-water',
  elevation: '3,400 ft',
};
const unknown = () => {
  try {
    return stillroom.findFood('pech');
  } catch (error) {
    return error;
  }
};
const CALLS = [
  ['testedProcess', () => stillroom.testedProcess(process)],
  ['fillJar', () => stillroom.fillJar({ jar: 'pint', headspace: '1/2 in' })],
  ['boilingTemperature', () => stillroom.boilingTemperature({ elevation: '3,400 ft' })],
  ['readyFromRaw', () => stillroom.readyFromRaw({ food: 'peach', form: 'halves', raw: '20 lb' })],
];

export function crafts(options) {
  section(
    'Physics',
    'From texts, with units, bounds, source and cautions, beside the same call of psychrolib, which takes and gives bare numbers.',
  );
  for (const [name, own, other] of PHYSICS) {
    const [base, { ratio, wall, cpu }] = beside(
      [
        { name: 'psychrolib', work: other },
        { name: 'stillroom', work: own },
      ],
      options,
    );
    tell(`physics / ${name}`, `${name}: stillroom / psychrolib`, { value: ratio, wall, cpu });
    tell('', `${name}: psychrolib itself`, { value: 1, wall: base.wall, cpu: base.cpu });
  }
  section(
    'Single calls',
    'A call by the time of `structuredClone` of its answer, and by that of one bare number: the saturation pressure of psychrolib.',
  );
  const [[, , bare]] = PHYSICS;
  for (const [name, work] of CALLS) {
    const answer = work();
    const copy = () => structuredClone(answer);
    for (const [kind, base, by] of [
      ['call', copy, 'a copy of its answer'],
      ['bare', bare, 'one bare number'],
    ]) {
      const [, { ratio, wall, cpu }] = beside(
        [
          { name: by, work: base },
          { name, work },
        ],
        options,
      );
      tell(`${kind} / ${name}`, `${name} / ${by}`, { value: ratio, wall, cpu });
    }
  }
  const [, { ratio, wall, cpu }] = beside(
    [
      { name: 'known', work: () => stillroom.findFood('peach') },
      { name: 'unknown', work: unknown },
    ],
    options,
  );
  tell('call / unknown name', 'a name that no food has / one that a food has', { value: ratio, wall, cpu });
}
