# Sizes as in rim.py: 24 sectors, 3 bands, at most 60 bins (64 with what is shared out beyond the rim).

cdef class Rim:
    cdef unsigned short[:, ::1] depth
    cdef short[:, ::1] edges
    cdef unsigned short[:, ::1] above
    cdef unsigned short[::1] reach
    cdef unsigned short[:, ::1] disc
    cdef public Py_ssize_t used
    # the contact of the piece under way, over bins across the travel
    cdef int bins
    cdef double wide
    cdef double half
    cdef double scale
    cdef float cover[3][64]
    cdef float high[3][64]
    cdef float local[64]
    cdef float place[64]
    cdef float low_end[64]
    cdef float high_end[64]
    cdef int parts[3]
    cdef double first[3][2]
    cdef double last[3][2]
    cdef double limit[3]
    cdef float depths[24]
    cdef double middle[24]
    # answers
    cdef double ap
    cdef double ae
    cdef double angle
    cdef double climb

    cdef void clear(self) noexcept nogil
    cdef void gather(
        self, const float* v, const float* h, const float* area, int n, int band,
        double half, double cell, double length,
    ) noexcept nogil
    cdef void highest(
        self, const float* v, const float* h, const float* area, int n, double half, double cell, double length,
    ) noexcept nogil
    cdef void flat(
        self, const float* v, const float* h, const float* area, int n, double radius, double cell, double length,
    ) noexcept nogil
    cdef void rounded(self, double foot, double most) noexcept nogil
    cdef void _whole_length(self) noexcept nogil
    cdef double _side(self, double v, int b) noexcept nogil
    cdef void _close(self, int band, double start, double end) noexcept nogil
    cdef void _runs(self, int band) noexcept nogil
    cdef void _run(self, int band, int start, int end, double width, double middle) noexcept nogil
    cdef double _edge(self, int band, int b, int inward) noexcept nogil
    cdef void _keep(self, int band, double first, double last) noexcept nogil
    cdef int _limits(self) noexcept nogil
    cdef double _zone(self, int band, int bands, double v, double whole) noexcept nogil
    cdef double _zone_mean(self, int band, int bands) noexcept nogil
    cdef int _band_at(self, double v, int bands) noexcept nogil
    cdef void _sectors(self, int bands) noexcept nogil
    cdef void _pair(self, int bands) noexcept nogil
    cdef void _fill(self, double first, double high_first, double last, double high_last) noexcept nogil
    cdef double _reaches(self, double area, const float* under_area, const float* under_high) noexcept nogil
    cdef int _share(self, double share) noexcept nogil
    cdef Py_ssize_t write(
        self, double reach, double disc_area, double share, const float* under_area, const float* under_high,
    ) noexcept nogil
