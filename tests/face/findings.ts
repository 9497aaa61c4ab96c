import 'axe-core/axe.min.js';
import type { AxeResults, RunOptions } from 'axe-core';
import { expect } from 'chai';

const { axe } = window as unknown as {
  axe: { run(root: Element, options: RunOptions): Promise<AxeResults> };
};

/** What axe finds, in a few words each, so that a failure says where to look. */
export const findings = async (root: Element): Promise<string[]> => {
  const { violations, passes } = await axe.run(root, { resultTypes: ['violations'] });
  expect(passes.length).to.be.greaterThan(5);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html}\n${failureSummary}`),
  );
};
