/** What does not fit together between cycles. */
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';

/** A cycle's address, and where its record says it. */
interface WrittenAddress {
  readonly address: string;
  readonly location: () => Location;
}

/** Two cycles cannot stand at one address; some disks do not tell capitals from small letters. */
export const addressFindings = (cycles: readonly WrittenAddress[]): readonly Diagnostic[] => {
  const byAddress = new Map<string, WrittenAddress>();
  return cycles.flatMap((cycle): readonly Diagnostic[] => {
    const address = cycle.address.toLowerCase();
    const other = byAddress.get(address);
    if (!other) {
      byAddress.set(address, cycle);
      return [];
    }
    return [
      {
        weight: 'must fix',
        rule: 'address-twice',
        location: cycle.location(),
        message: `Unexpected address \`${address}\`, expected one that no other cycle has`,
        fix: 'Take `address` out, or write another',
        related: { location: other.location(), message: 'the other is here' },
      },
    ];
  });
};
