/** What stands in the place of a value, by its path; undefined: the value stays, and what is in it is looked at. */
type Replacement = (path: string, value: unknown) => unknown;

/** The same tree with some of its values replaced. Example: replaced({ a: [1, 2] }, (path) => (path === 'a.1' ? 3 : undefined)) → { a: [1, 3] }. */
export function replaced<Tree>(tree: Tree, by: Replacement, path = ''): Tree {
  const instead = path === '' ? undefined : by(path, tree);
  if (instead !== undefined) return instead as Tree;
  if (typeof tree !== 'object' || tree === null) return tree;
  const at = (key: string): string => (path === '' ? key : `${path}.${key}`);
  if (Array.isArray(tree)) return tree.map((each, index) => replaced(each, by, at(String(index)))) as Tree;
  return Object.fromEntries(
    Object.entries(tree).map(([key, value]) => [key, replaced(value, by, at(key))]),
  ) as Tree;
}
