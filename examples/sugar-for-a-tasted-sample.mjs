/** A cup tastes right. How much sugar does the whole pot need? Invented: rhubarb sauce for a church supper. */
import { formatQuantity, StillroomError } from 'stillroom';
import { sweetenToTaste } from 'stillroom/sugar';

const tastings = [
  { sample: '1 cup', sugarAdded: '5 tsp', toSweeten: '2 1/2 gal' },
  { sample: '200 g', sugarAdded: '18 g', toSweeten: '9.4 kg' },
  { sample: '1 cup', sugarAdded: '5 tsp', toSweeten: '20 lb' },
];

for (const tasting of tastings) {
  console.log(`${tasting.sugarAdded} made ${tasting.sample} right; ${tasting.toSweeten} to go`);
  try {
    const { sugar, sugarVolume, cautions } = sweetenToTaste(tasting);
    const cups = formatQuantity(sugarVolume, { unit: 'cup', rounding: 'down', fraction: 4 });
    console.log(`  Add ${formatQuantity(sugar, { step: 5, rounding: 'down' })} of sugar, about ${cups}.`);
    console.log(`  ${cautions[0].text}`);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    console.log(`  No answer: ${error.message}`);
  }
}
