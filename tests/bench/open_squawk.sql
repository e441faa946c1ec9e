-- Every open squawk of every closing whose reach it meets: one of the rules of readiness, in SQL.
WITH RECURSIVE above(part, ancestor) AS (
    SELECT id, id FROM component WHERE withdrawn_on IS NULL
    UNION ALL
    SELECT above.part, c.parent_id FROM above JOIN component c ON c.id = above.ancestor
    WHERE c.parent_id IS NOT NULL)
SELECT e.closing_id, s.id
FROM squawk s
JOIN above ON above.part = s.component_id
JOIN closing_encloses e ON e.item = above.ancestor
JOIN closing c ON c.id = e.closing_id AND c.withdrawn_on IS NULL
WHERE s.withdrawn_on IS NULL AND s.found_on <= '2026-11-25'
  AND (s.verified_on IS NULL OR s.verified_on > '2026-11-25')
  AND (s.accepted_on IS NULL OR s.accepted_on > '2026-11-25')
  AND s.id NOT IN (SELECT squawk_id FROM squawk_needs_access_to)
