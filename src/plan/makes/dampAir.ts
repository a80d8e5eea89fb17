/** What damp air in the room does to the hours of a dryer. */

import { mapRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import { moistAir } from '../../steam/moistAir';
import { customary, customaryBasis } from '../figures/customary';
import { standsBehind } from '../figures/standsBehind';
import type { Kitchen } from '../request/planInput';

type Hours = Range<Quantity<'time'>>;

/** Hours in a dryer, and where they come from. */
export interface DryingHours {
  readonly hours: Hours;
  readonly basis: readonly Basis[];
}

/**
 * Printed hours in a room as damp as the cook says: `hours x (T - Tw of usual air) / (T - Tw of this air)`, where T is
 * the dryer's temperature and Tw the wet-bulb temperature of the room's air warmed to it. While the surface is wet,
 * warm air dries in proportion to how far the wet bulb stands below it. In drier air than usual the hours stay as printed.
 */
export function hoursInRoom(
  { elevation, dryer }: Kitchen,
  hours: Hours,
  temperature: Quantity<'temperature'> | undefined,
): DryingHours {
  const humidity = dryer?.relativeHumidity;
  const usual = customary('room-humidity');
  if (humidity === undefined || humidity <= usual || temperature === undefined) return { hours, basis: [] };
  const room: Quantity<'temperature'> = { value: customary('room-temperature'), unit: 'degC' };
  const warmed = (relativeHumidity: number) => {
    const { humidityRatio } = moistAir({ temperature: room, relativeHumidity, elevation });
    return moistAir({ temperature, humidityRatio, elevation });
  };
  const below = (relativeHumidity: number): number =>
    valueIn(temperature, 'degC') - valueIn(warmed(relativeHumidity).wetBulb, 'degC');
  const longer = below(usual) / below(humidity);
  return {
    hours: mapRange(hours, (each) => quantityIn<'time'>(longer * each.value, each.unit, each.unit)),
    basis: [
      customaryBasis('room-humidity', 'drying.hours'),
      ...standsBehind(
        'drying.hours',
        warmed(humidity).basis.filter(({ of }) => of === 'wetBulb'),
      ),
    ],
  };
}
