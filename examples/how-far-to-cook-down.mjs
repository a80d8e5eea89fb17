/** How far must this cook down? Invented: sweet cider for cider syrup, in a pot 12 inches wide and 10 inches deep. */
import { formatQuantity, kitchenMeasure, StillroomError } from 'stillroom';
import { concentrate } from 'stillroom/sugar';

const asked = [
  { volume: '2 gal', solids: '13.5 %' },
  { volume: '4 gal', solids: '13.5 %' },
];
const pot = { targetSolids: '66 %', potSize: { diameter: '12 in', depth: '10 in' } };
const pounds = (mass) => formatQuantity(mass, { unit: 'lb', fraction: 4 });
const inches = (depth) => formatQuantity(depth, { unit: 'in', fraction: 8 });

for (const { volume, solids } of asked) {
  console.log(`${volume} of cider at ${solids} solids, down to ${pot.targetSolids}`);
  const weighed = kitchenMeasure({ food: 'apple juice', volume });
  if (!weighed.known) {
    console.log(`  No answer: ${weighed.reason.text}`);
    continue;
  }
  try {
    const mass = pounds(weighed.mass);
    const left = concentrate({ mass, solids, ...pot });
    const cups = formatQuantity(left.volume, { unit: 'cup', fraction: 4 });
    console.log(`  It weighs about ${mass}; ${pounds(left.waterRemoved)} of water has to boil off.`);
    console.log(`  Stop when ${pounds(left.mass)} is left, about ${cups}.`);
    console.log(`  In this pot it goes from ${inches(left.startDepth)} deep to ${inches(left.depth)}.`);
    for (const { text } of left.cautions) console.log(`  - ${text}`);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    console.log(`  No answer: ${error.message}`);
  }
}
