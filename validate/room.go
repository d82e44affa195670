package validate

// A room holds lists that are filled one after another, many in one stretch of
// memory.
type room[T any] struct {
	size int // how many things a stretch takes in
	used int // how many all lists hold
	all  []T // the stretch that is being filled
	free []T // what is left of it
}

// list gives an empty list with space for a few things at least. It ends with
// kept, and one is filled at a time.
func (r *room[T]) list(few int) []T {
	if cap(r.free) < few {
		r.all = make([]T, 0, max(few, r.size))
		r.free = r.all
	}
	return r.free
}

// kept takes a list as filled.
func (r *room[T]) kept(list []T) []T {
	r.used += len(list)
	if cap(list) == cap(r.free) { // else it outgrew the room
		r.free = list[len(list):]
	}
	return list[:len(list):len(list)]
}

// clear empties the room for other lists: those that it held may be used no more.
func (r *room[T]) clear() {
	if r.size < r.used {
		r.size, r.all = 2*r.used, nil
	}
	r.free, r.used = r.all, 0
}
