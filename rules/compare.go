package rules

import "gudgeon/rules/source"

// Compare says in a foreman's words what differs between two versions of a
// sheet, in the order of the sheet.
func (s *Sheet) Compare(newer *Sheet) []string {
	list := source.Compare("sheet "+newer.Name.Value, *s, *newer)
	list = append(list, compareMaps("reading", s.Readings, newer.Readings)...)
	list = append(list, compareMaps("value", s.Values, newer.Values)...)
	list = append(list, source.CompareNames("rule", ruleIDs(s.Rules), ruleIDs(newer.Rules))...)
	for _, old := range s.Rules {
		for _, now := range newer.Rules {
			if old.ID.Value == now.ID.Value {
				list = append(list, source.Compare("rule "+old.ID.Value, old, now)...)
			}
		}
	}
	return list
}

func compareMaps[T any](what string, old, newer source.Map[T]) []string {
	list := source.CompareNames(what, keys(old), keys(newer))
	for _, e := range old {
		if now, ok := newer.Get(e.Key.Value); ok {
			list = append(list, source.Compare(what+" "+e.Key.Value, e.Value, now)...)
		}
	}
	return list
}

func keys[T any](m source.Map[T]) []string {
	names := make([]string, len(m))
	for i := range m {
		names[i] = m[i].Key.Value
	}
	return names
}

func ruleIDs(list []ruleSource) []string {
	ids := make([]string, len(list))
	for i := range list {
		ids[i] = list[i].ID.Value
	}
	return ids
}
