import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { choice, fields, name, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { REFERENCE_TEMPERATURE, solutionTemperature } from './fields';
import { FITS, type Fit, saltNamed, waysTo } from './saltTables';

const schema = fields({
  /** Name or formula of the salt in the saturated solution: `table salt`, `NaCl`. */
  solute: name('the name or formula of a salt'),
  /** Temperature of the solution, 0 to 100 degC; 25 degC when left out. */
  temperature: optional(solutionTemperature()),
  /** One way to the figure: `table`, `cubic`, `exponential` or `log`; the best one when left out. */
  fit: optional(choice('a way to the figure', FITS)),
});
export type SaturatedSaltHumidityInput = z.input<typeof schema>;
export interface SaturatedSaltHumidity {
  /** Formula of the salt. */
  readonly solute: string;
  /** Relative humidity of the air over the saturated solution, 0 to 1: its water activity. */
  readonly relativeHumidity: number;
  /** The same with its error. */
  readonly relativeHumidityRange: Range<number>;
  /** The way it was found: a printed table, or the kind of fit. */
  readonly fit: Fit;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Percent as a share, with the digits of the percentage and no more: 75.3 is 0.753. */
const shareOf = (percent: number): number => Number((percent / 100).toPrecision(15));

/**
 * The relative humidity over a saturated salt solution, 0 to 1: a known point to check a water-activity meter or a
 * hygrometer by.
 *
 * The printed table comes first (OIML R 121, 5 to 80 degC), then recalled figures for salts it lacks, then the fits:
 * `cubic` `RH = A0 + A1 t + A2 t^2 + A3 t^3`, `exponential` `RH = A exp(B/T)`, `log` `ln aw = k1/T - k2`.
 * Printed rows are given exactly; between two of them, the straight line.
 *
 * @param input - `solute`: formula or name (`NaCl`, `table salt`, `magnesium chloride`); `temperature`: 0 to 100 degC,
 * 25 degC when left out; `fit`: to ask for one of the fits
 * @throws StillroomError UNKNOWN_NAME for a salt or fit in none of the tables; OUT_OF_RANGE at a temperature outside
 * those of the tables
 *
 * @example
 * ```ts
 * import { saturatedSaltHumidity } from 'stillroom/water-activity';
 *
 * saturatedSaltHumidity({ solute: 'NaCl', temperature: '25 degC' }).relativeHumidity; // => 0.753
 * saturatedSaltHumidity({ solute: 'potassium chloride', temperature: '20 degC' }).relativeHumidity; // => 0.851
 * ```
 */
export function saturatedSaltHumidity(input: SaturatedSaltHumidityInput): SaturatedSaltHumidity {
  const { solute: asked, temperature: at, fit } = readInput(schema, input);
  const salt = saltNamed(asked);
  const t = at === undefined ? REFERENCE_TEMPERATURE : valueIn(at, 'degC');
  const all = waysTo(salt);
  // the logarithmic fits are the least sure: only for those who ask
  const ways = fit === undefined ? all.filter((way) => way.fit !== 'log') : all.filter((way) => way.fit === fit);
  if (ways.length === 0) {
    const options = [...new Set(all.map((way) => way.fit))];
    fail('UNKNOWN_NAME', 'fit', fit, `a way to a figure for ${salt} in these tables: ${options.join(', ')}`, {
      options,
    });
  }
  const way = ways.find(({ from, to }) => t >= from && t <= to);
  if (way === undefined) {
    const ranges = ways.map(({ from, to }) => `${from} to ${to} degC`).join(', ');
    fail('OUT_OF_RANGE', 'temperature', `${t} degC`, `a temperature of the tables for ${salt}: ${ranges}`);
  }
  const { percent, ends, row, cautions } = way.at(t);
  const basis = basisOf(row, 'relativeHumidity', `relative humidity over saturated ${salt}`);
  return answer({
    solute: salt,
    relativeHumidity: shareOf(percent),
    relativeHumidityRange: {
      low: shareOf(Math.max(ends[0], 0)),
      likely: shareOf(percent),
      high: shareOf(Math.min(ends[1], 100)),
    },
    fit: way.fit,
    basis: [way.fit === 'table' || basis.kind === 'recalled' ? basis : { ...basis, kind: 'equation' }],
    cautions,
  });
}
