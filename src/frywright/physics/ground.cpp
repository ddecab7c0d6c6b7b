// What compiled kernels of the day and the oil stand on: memory for their arrays, and numbers by chance.
//
// Kernels are written in Python for Numba (plan/engine.py, oil/filter_kernel.py ...); scripts/kernels.py makes
// LLVM's text of them and joins this file to it, so that where they run neither Numba nor a compiler is needed.
// Names and layouts are those that Numba's code calls. The generator is the Mersenne Twister (Matsumoto and
// Nishimura, 1998) with Knuth's initialisation; large Poisson numbers are drawn by transformed rejection
// (Hoermann, Insurance: Mathematics and Economics 12, 1993), both as in Numba and NumPy, so that draws are the
// same bit for bit. Numba: Copyright (c) 2012, Anaconda, Inc., BSD 2-Clause; NumPy: Copyright (c) 2005-2025,
// NumPy Developers, BSD 3-Clause; texts in ground.LICENSE.

typedef unsigned long size;
typedef long count;

extern "C" {
void* malloc(size);
void* realloc(void*, size);
void free(void*);
void* memcpy(void*, const void*, size);
double log(double);
double sqrt(double);
double floor(double);
double fabs(double);
void* PyThread_tss_get(void*);
}

// Memory. One thread at a time works on what a kernel has made, so counts are plain numbers.

typedef void (*Farewell)(void*, size, void*);
struct Held {
    size owners;
    Farewell farewell;
    void* told;
    void* data;
    size bytes;
    void* other;
};

static void give_back_apart(void* data, size bytes, void* told) {
    if (told) ((Farewell)told)(data, bytes, nullptr);
    free(data);
}

extern "C" {

void* NRT_Allocate(size bytes) { return malloc(bytes); }

void NRT_Free(void* data) { free(data); }

Held* NRT_MemInfo_alloc_aligned(size bytes, unsigned align) {
    Held* held = (Held*)malloc(sizeof(Held) + bytes + 2 * align);
    if (!held) return nullptr;
    size at = (size)(held + 1);
    *held = {1, nullptr, nullptr, (void*)((at + align - 1) / align * align), bytes, nullptr};
    return held;
}

Held* NRT_MemInfo_alloc(size bytes) { return NRT_MemInfo_alloc_aligned(bytes, 16); }

Held* NRT_MemInfo_new_varsize_dtor(size bytes, Farewell farewell) {
    Held* held = (Held*)malloc(sizeof(Held));
    void* data = malloc(bytes);
    if (!held || !data) {
        free(held);
        free(data);
        return nullptr;
    }
    *held = {1, give_back_apart, (void*)farewell, data, bytes, nullptr};
    return held;
}

void* NRT_MemInfo_varsize_realloc(Held* held, size bytes) {
    void* data = realloc(held->data, bytes);
    if (data) held->data = data, held->bytes = bytes;
    return data;
}

void NRT_incref(Held* held) {
    if (held) held->owners++;
}

void NRT_decref(Held* held) {
    if (!held || --held->owners) return;
    if (held->farewell) held->farewell(held->data, held->bytes, held->told);
    free(held);
}

// A contiguous array in another shape; whatever is not contiguous is left to the caller.
int numba_attempt_nocopy_reshape(count dims, const count* shape, const count* strides, count to_dims, const count* to,
                                 count* to_strides, count item, int) {
    count step = item;
    for (count i = dims - 1; i >= 0; i--) {
        if (shape[i] != 1 && strides[i] != step) return 0;
        step *= shape[i];
    }
    step = item;
    for (count i = to_dims - 1; i >= 0; i--) {
        to_strides[i] = step;
        step *= to[i];
    }
    return 1;
}

// Kernels speak with nobody: that one stopped is seen in what it returns.
void PyErr_SetString(void*, const char*) {}

}  // extern "C"

// Chance. Every thread has its own state; whoever calls a kernel has put it there.

constexpr int N = 624, M = 397;
struct Chance {
    int index;
    unsigned mt[N];
    int has_gauss;
    double gauss;
    int is_initialized;
};

static void* state_key;

static unsigned twisted(unsigned a, unsigned b) {
    unsigned y = (a & 0x80000000u) | (b & 0x7fffffffu);
    return (y >> 1) ^ (-(y & 1u) & 0x9908b0dfu);
}

extern "C" {

void chance_of_threads(void* key) { state_key = key; }

size chance_bytes() { return sizeof(Chance); }

Chance* numba_get_np_random_state() { return (Chance*)PyThread_tss_get(state_key); }

void numba_rnd_init(Chance* state, unsigned seed) {
    for (unsigned i = 0; i < N; i++) {
        state->mt[i] = seed;
        seed = 1812433253u * (seed ^ (seed >> 30)) + i + 1;
    }
    state->index = N;
    state->has_gauss = 0;
    state->gauss = 0.0;
    state->is_initialized = 1;
}

void numba_rnd_shuffle(Chance* state) {
    unsigned* mt = state->mt;
    for (int i = 0; i < N; i++) mt[i] = mt[(i + M) % N] ^ twisted(mt[i], mt[(i + 1) % N]);
}

}  // extern "C"

static unsigned next_word(Chance* state) {
    if (state->index == N) {
        numba_rnd_shuffle(state);
        state->index = 0;
    }
    unsigned y = state->mt[state->index++];
    y ^= y >> 11;
    y ^= (y << 7) & 0x9d2c5680u;
    y ^= (y << 15) & 0xefc60000u;
    return y ^ (y >> 18);
}

static double next_double(Chance* state) {
    double a = next_word(state) >> 5, b = next_word(state) >> 6;
    return (a * 67108864.0 + b) / 9007199254740992.0;
}

// Logarithm of the gamma function by Stirling's series (Zhang and Jin, Computation of Special Functions, 1996).
static double log_gamma(double x) {
    static const double a[10] = {8.333333333333333e-02, -2.777777777777778e-03, 7.936507936507937e-04,
                                 -5.952380952380952e-04, 8.417508417508418e-04, -1.917526917526918e-03,
                                 6.410256410256410e-03,  -2.955065359477124e-02, 1.796443723688307e-01,
                                 -1.39243221690590e+00};
    if (x == 1.0 || x == 2.0) return 0.0;
    count n = x <= 7.0 ? (count)(7 - x) : 0;
    double x0 = x + n, x2 = 1.0 / (x0 * x0), sum = a[9];
    for (int k = 8; k >= 0; k--) {
        sum *= x2;
        sum += a[k];
    }
    double got = sum / x0 + 0.5 * log(2 * 3.14159265358979323846) + (x0 - 0.5) * log(x0) - x0;
    for (count k = 1; k <= n; k++) {
        got -= log(x0 - 1.0);
        x0 -= 1.0;
    }
    return got;
}

extern "C" count numba_poisson_ptrs(Chance* state, double mean) {
    double log_mean = log(mean), b = 0.931 + 2.53 * sqrt(mean), a = -0.059 + 0.02483 * b;
    double one_by_alpha = 1.1239 + 1.1328 / (b - 3.4), squeeze = 0.9277 - 3.6224 / (b - 2);
    for (;;) {
        double u = next_double(state) - 0.5, v = next_double(state), us = 0.5 - fabs(u);
        count k = (count)floor((2 * a / us + b) * u + mean + 0.43);
        if (us >= 0.07 && v <= squeeze) return k;
        if (k < 0 || (us < 0.013 && v > us)) continue;
        if (log(v) + log(one_by_alpha) - log(a / (us * us) + b) <= -mean + (double)k * log_mean - log_gamma((double)k + 1))
            return k;
    }
}
