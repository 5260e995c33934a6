import { expect, test } from 'vitest';
import { projectIds, projects } from '../../../src/model/trace/project-facts.ts';

test.each(projectIds)('%s says where its size comes from', (id) => {
  expect(projects[id].source).not.toBe('');
});
test('a batting is at least as large as its top', () => {
  for (const id of projectIds) {
    const project = projects[id];
    if (project.kind === 'quilt') {
      expect(project.batting[0]).toBeGreaterThanOrEqual(project.top[0]);
      expect(project.batting[1]).toBeGreaterThanOrEqual(project.top[1]);
    }
  }
});
