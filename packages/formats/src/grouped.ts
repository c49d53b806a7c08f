/** Members by a key, groups and members in the order they first come up. */
export function grouped<Member, Key>(members: Iterable<Member>, keyOf: (member: Member) => Key): Map<Key, Member[]> {
  const groups = new Map<Key, Member[]>();
  for (const member of members) {
    const key = keyOf(member);
    const group = groups.get(key);
    if (group) group.push(member);
    else groups.set(key, [member]);
  }
  return groups;
}
