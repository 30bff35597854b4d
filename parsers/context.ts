import type { Container, DayOrder, Doubt, Drum, FieldRecord, Language, ProblemTopic, Units } from '#records';

/** What the book knows that helps to read a message. Absent in `read`, which knows only the site file. */
export type BookContext = {
  /** As typed (gross where gross), by container, or `container label`: count, mean and sd in kg. */
  weights: Record<string, { n: number; meanKg: number; sdKg: number }>;
  /** Last readings of each place, newest first. */
  lastReadings: Record<string, { localDate: string; celsius: number[] }[]>;
  openProblems: { entry: number; topic: ProblemTopic; place: string | null }[];
  /** What the sender's last message made, for `another 58.5`, `same again`, `and C 39`, `sorry 56.2 not 58.2`. */
  lastOfSender: { records: FieldRecord[]; entries: number[]; minutesAgo: number } | null;
  /** The doubt or question that this message may answer: the one replied to, or the newest open one. */
  openQuestion:
    | { about: 'doubt'; entry: number; doubt: Doubt }
    | { about: 'tare'; container: string; label: string | null }
    | { about: 'ambient' }
    | { about: 'new-pile'; entry: number; place: string; record: FieldRecord; choices: string[] }
    | null;
  /** What such a container held or was asked for with today, for `one more barrow`; several where two fit. */
  lastLoads?: Record<string, string[]>;
  /** Keys of the jobs in the list last shown, so that `done 2` can be checked. */
  listed: string[];
};

/** Everything `readMessage` may know: the site's vocabulary, the moment of sending, and the book if there is one. */
export type ReadContext = {
  /** The site's wall time at which the message was sent: `2026-05-12T10:00`. */
  nowLocal: string;
  /** Minutes that the site's wall time is ahead of UTC at that moment. */
  offsetMin: number;
  languages: readonly Language[];
  units: Units;
  dayOrder: DayOrder;
  /** `cart`, `cart 5`, `bucket` … with what the site has set. */
  containers: Readonly<Record<string, Container>>;
  drums: readonly Drum[];
  /** Active piles and bays as places: `pile B`, `bay 3`. */
  piles: readonly string[];
  /** Places whose batch is gone, with the place it went to (null: emptied). */
  ceased: Readonly<Record<string, string | null>>;
  sources: readonly string[];
  /** Materials that the site has added to the contract's. */
  materials: readonly string[];
  /** Names of the site's own duties. */
  duties: readonly string[];
  book?: BookContext;
};
