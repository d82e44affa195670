package content

// ParseBand reads a stretch of altitude: 0-1,000 ft, 1,001-6,000 ft, above
// 6,000 ft. For the last, over is true and to is zero.
func ParseBand(s string) (from Altitude, over bool, to Altitude, err error) {
	return Altitude{}, false, Altitude{}, errNotYet
}
