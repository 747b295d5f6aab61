import type { Job } from "./job";

/** The stand's name; data that is invented says so wherever the name stands. */
export const jobTitle = ({ stand, invented }: Job): string =>
  invented && !/invented/i.test(stand) ? `${stand} - invented data` : stand;
