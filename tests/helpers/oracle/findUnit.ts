/** What finding a unit is checked against: every spelling is tidied by patterns before it is looked up. */
import { DIMENSIONS, type Dimension, unitDefinitions as definitions } from '../../../src/quantity/units';

export type FoundUnit = { readonly dimension: Dimension; readonly unit: string };

const byName = new Map<string, FoundUnit>(); // canonical names and spellings, as written
const byLowerName = new Map<string, FoundUnit | null>(); // lower case; null where two units share it
const differenceNames = new Map<string, FoundUnit>();

for (const dimension of DIMENSIONS) {
  for (const [unit, { plural, spellings }] of Object.entries(definitions[dimension])) {
    const found: FoundUnit = { dimension, unit };
    for (const name of [unit, plural, ...spellings]) {
      if (name === undefined) continue;
      if (dimension === 'temperatureDifference') {
        differenceNames.set(name.toLowerCase(), found);
        if (name !== unit) continue; // `degC` alone is a temperature, never an interval
      }
      byName.set(name, found);
      const lower = name.toLowerCase();
      const known = byLowerName.get(lower);
      byLowerName.set(lower, known === undefined || (known !== null && known.unit === unit) ? found : null);
    }
  }
}

/**
 * Finds a unit by any of its spellings, or says nothing when there is none or when the lower-case spelling
 * could be two units (`mpa`). Where an interval of temperature is asked for, `18 degF` means the interval.
 */
export function findUnit(text: string, wanted?: Dimension): FoundUnit | undefined {
  const name = text.trim().replace(/\s+/g, ' ');
  if (wanted === 'temperatureDifference') {
    const interval = differenceNames.get(name.toLowerCase());
    if (interval !== undefined) return interval;
  }
  const bare = name.replace(/\.$/, ''); // "tbsp."
  return byName.get(name) ?? byName.get(bare) ?? byLowerName.get(bare.toLowerCase()) ?? undefined;
}
