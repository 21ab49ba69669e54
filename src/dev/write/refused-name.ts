import { DeskRefusal } from '../desk-door.ts';

/** A name cannot be given; the page leads its author to the field. */
export function refusedName(message: string): DeskRefusal {
  return new DeskRefusal(message, 400, 'name');
}
