/** How much fits in the freeze-dryer? Invented: shelled peas and ripe avocados for one small machine. */
import { formatQuantity, StillroomError } from 'stillroom';
import { freezeDryLoad } from 'stillroom/drying';

const machine = { iceCapacity: '6 lb', trayArea: '4.5 ft2' };
const asked = [
  { food: 'peas', fresh: '18 lb', moisture: { low: '76 %', likely: '79 %', high: '82 %' }, thickness: '1/2 in' },
  { food: 'avocado', fresh: '5 lb', moisture: '73 %', thickness: '3/8 in' },
  { food: 'avocado', fresh: '5 lb', moisture: '73 %', thickness: '6 in' },
];
const lb = (quantity, rounding) => formatQuantity(quantity, { unit: 'lb', fraction: 4, rounding });

for (const load of asked) {
  console.log(`${load.fresh} of ${load.food}, ${load.thickness} thick on the trays`);
  try {
    const { batches, perBatch, limitedBy, icePerBatch, dried, hoursPerBatch, cautions } = freezeDryLoad({
      ...load,
      machine,
    });
    console.log(
      `  ${batches} ${batches === 1 ? 'batch' : 'batches'} of ${lb(perBatch, 'down')}; the limit is the ${limitedBy}.`,
    );
    console.log(
      `  Each leaves up to ${lb(icePerBatch, 'up')} of ice, and takes ${hoursPerBatch.low.value} to ${hoursPerBatch.high.value} h.`,
    );
    console.log(`  Dried, it all weighs ${lb(dried.low, 'down')} to ${lb(dried.high, 'up')}.`);
    for (const { severity, text } of cautions) if (severity !== 'note') console.log(`  - ${text}`);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    console.log(`  No answer: ${error.message}`);
  }
}
