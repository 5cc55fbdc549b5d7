/** A rule of a decision table as it is taught. No digits: numbers are worked out. */
export interface RuleLesson {
  readonly title: string;
  /** what the number is that is held against a line, and what the line is */
  readonly number: string;
  readonly limit: string;
  readonly plain: string;
  readonly mistake: string;
  /** the number is a share of the yearly five-axis hours: of the families that the rule names, or of all others */
  readonly share?: 'named' | 'others';
}

interface Shared {
  readonly plain: string;
  readonly mistake: string;
  readonly share?: 'named' | 'others';
}
interface Compared {
  readonly number: string;
  readonly limit: string;
}
type Missing<Group> = Omit<Compared, keyof Group> & Partial<Compared> & Partial<Pick<RuleLesson, 'share'>>;

/** A rule of a group that shares its words: its title, what it says, and what the group leaves out or has otherwise. */
export function inGroup<Group extends Shared & Partial<Compared>>(
  group: Group,
  title: string,
  says: string,
  ...[own]: Group extends Compared ? [own?: Missing<Group>] : [own: Missing<Group>]
): RuleLesson {
  const { number = '', limit = '', plain, mistake, share } = { ...group, ...own };
  return {
    title,
    number,
    limit,
    plain: `${says} ${plain}`,
    mistake,
    ...(share === undefined ? {} : { share }),
  };
}
