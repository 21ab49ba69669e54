/** The date that SOURCE_DATE_EPOCH tells in seconds since 1970, if it does (reproducible-builds.org). */
export function toldDate(): Date | undefined {
  const told = process.env.SOURCE_DATE_EPOCH;
  return told !== undefined && /^\d{1,11}$/.test(told) ? new Date(Number(told) * 1000) : undefined;
}
