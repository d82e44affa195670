package validate

// A room holds lists that are filled one after another, many in one stretch of
// memory.
type room[T any] struct {
	size int // how many things it takes in before it needs more memory
	free []T
}

// list gives an empty list with space for a few things at least. It ends with
// kept, and one is filled at a time.
func (r *room[T]) list(few int) []T {
	if cap(r.free) < few {
		r.free = make([]T, 0, max(few, r.size))
	}
	return r.free
}

// kept takes a list as filled.
func (r *room[T]) kept(list []T) []T {
	if cap(list) == cap(r.free) { // else it outgrew the room
		r.free = list[len(list):]
	}
	return list[:len(list):len(list)]
}
