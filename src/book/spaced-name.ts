/** A field's name as it is read: `freeAir` as `free air`. */
export const spacedName = (field: string): string => field.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
