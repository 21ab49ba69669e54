/** The name of a course's database: for good, since readers' progress is kept under it. */
export const databaseName = (course: string) => `practice:${course}`;
