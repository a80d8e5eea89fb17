import * as z from 'zod/mini';
import table from '../../data/process/gauge-pressure.json';
import { answer } from '../common/answer';
import { fields, kitchenElevation, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import type { LengthInput, Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { id, positive, type RowOf, sourcedColumns } from '../sources/columns';
import type { NotTested } from '../sources/no';
import { asTable, basisOf } from '../sources/table';
import { type Acidity, acidity } from '../words/acidity';
import { method } from '../words/method';
import { bandIndex, bandText, thinAir } from './bands';
import { processCaution, usualCautions } from './cautions';
import { keepings, refusal } from './refusal';

const GAUGES = ['dial-gauge', 'weighted-gauge'] as const;
type Gauge = (typeof GAUGES)[number];

/** The canner pressure printed for one elevation band. */
export const gaugePressureRow = () =>
  z.strictObject({
    id: id(),
    /** `dial-gauge` or `weighted-gauge`. */
    method: z.enum(GAUGES),
    /** Upper end of the band in feet, inclusive; `null` is open. */
    upToFt: z.nullable(positive()),
    lowAcidPsi: positive(),
    acidPsi: z.nullable(positive()),
    ...sourcedColumns(),
  });
type PressureRow = RowOf<typeof gaugePressureRow>;
/** Rows of secondary charts stay out: the published tables end before them. */
const rows = asTable<PressureRow>(table).rows.filter((row) => row.obtained === 'read');

const schema = /* @__PURE__ */ fields({
  /** The canner. */
  method: method(GAUGES),
  /** `low-acid` for vegetables, meat, poultry and fish; `acid` for fruit. */
  acidity: acidity(),
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
});

export interface GaugePressureInput {
  /** The canner. */
  readonly method: Gauge;
  /** `low-acid` for vegetables, meat, poultry and fish; `acid` for fruit. */
  readonly acidity: Acidity;
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  readonly elevation: LengthInput;
}
export interface GaugePressure {
  /** Gauge pressure to hold. */
  readonly pressure: Quantity<'pressure'>;
  /** Where it comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The printed canner pressure for an elevation: dial gauge 11, 12, 13, 14 psi for low-acid food and 6, 7, 8, 9 psi for
 * fruit up to 2,000, 4,000, 6,000 and 8,000 ft; weighted gauge 10 and 15 psi, or 5 and 10, up to and above 1,000 ft.
 * Tomatoes have lines at either pressure, each with its own minutes: take those from `testedProcess`.
 *
 * Source: USDA Complete Guide to Home Canning (AIB 539), guides 2 and 4.
 *
 * too thin for a weighted gauge
 * @returns the gauge pressure, or a refusal above the end of the table
 * @throws StillroomError MISSING, UNKNOWN_NAME, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { gaugePressure } from 'stillroom/process';
 *
 * const answer = gaugePressure({ method: 'dial-gauge', acidity: 'low-acid', elevation: '4,500 ft' });
 * 'pressure' in answer && answer.pressure; // => { value: 13, unit: 'psi' }
 * ```
 */
export function gaugePressure(input: GaugePressureInput): GaugePressure | NotTested {
  const { method: gauge, acidity: kind, elevation } = readInput(schema, input);
  const thin = thinAir(gauge, elevation);
  if (thin !== undefined) {
    return answer(refusal(thin, keepings()));
  }
  const bands = rows.filter((row) => row.method === gauge);
  const ends = bands.map((row) => row.upToFt);
  const index = bandIndex(elevation, ends);
  const row = index === undefined ? undefined : bands[index];
  if (row === undefined || index === undefined) {
    const end = formatQuantity({ value: ends[ends.length - 1] as number, unit: 'ft' });
    return answer(
      refusal(
        {
          code: 'too high',
          text: `the ${gauge} tables end at ${end}`,
          basis: bands.slice(-1).map((last) => basisOf(last, 'reason', 'the last band')),
        },
        [
          ...(thinAir('weighted-gauge', elevation) === undefined
            ? [{ text: 'use a weighted-gauge canner, whose tables go higher', method: 'weighted-gauge' as const }]
            : []),
          ...keepings(),
        ],
      ),
    );
  }
  return answer({
    pressure: { value: kind === 'acid' ? (row.acidPsi as number) : row.lowAcidPsi, unit: 'psi' },
    basis: [basisOf(row, 'pressure', bandText(ends, index))],
    cautions: [
      ...(gauge === 'dial-gauge' ? [processCaution('dial-gauge-check')] : []),
      ...['vent-ten-minutes', 'restart-if-pressure-drops'].map(processCaution),
      ...usualCautions(),
    ],
  });
}
